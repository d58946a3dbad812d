/** A figure as it was stated: a reading may be a limit, a span or nothing found. */
export type Stated<T extends number = number> =
  | { readonly is: 'exact' | 'about'; readonly value: T }
  | { readonly is: 'below' | 'above'; readonly limit: T }
  | { readonly is: 'between'; readonly low: T; readonly high: T }
  /** Nothing found, and the limit of the kit not told. */
  | { readonly is: 'not detected' }

/** The same statement in another unit; `change` must keep the order of numbers. */
export function mapStated<T extends number, U extends number>(
  stated: Stated<T>,
  change: (value: T) => U,
): Stated<U> {
  switch (stated.is) {
    case 'exact':
    case 'about':
      return { is: stated.is, value: change(stated.value) }
    case 'below':
    case 'above':
      return { is: stated.is, limit: change(stated.limit) }
    case 'between':
      return { is: 'between', low: change(stated.low), high: change(stated.high) }
    case 'not detected':
      return stated
  }
}

/** The lowest number in the statement; undefined where it has none. */
export function lowest(stated: Stated): number | undefined {
  switch (stated.is) {
    case 'exact':
    case 'about':
      return stated.value
    case 'below':
    case 'above':
      return stated.limit
    case 'between':
      return stated.low
    case 'not detected':
      return undefined
  }
}

/** The number of a statement that has one and is neither a limit nor a span. */
export function oneNumber(stated: Stated): number | undefined {
  return stated.is === 'exact' || stated.is === 'about' ? stated.value : undefined
}

/** Whether every number in the statement is one that we can hold. */
export function isHeld(stated: Stated): boolean {
  return Object.values(stated).every((part) => typeof part !== 'number' || Number.isFinite(part))
}

/**
 * The statement as people write it, to a number of digits.
 *
 * @example statedInWords({ is: 'below', limit: 0.03 }) // '<0.03'
 * @example statedInWords({ is: 'between', low: 5, high: 10 }) // '5 to 10'
 */
export function statedInWords(stated: Stated, digits = 4): string {
  const put = (value: number): string => String(Number(value.toPrecision(digits)))
  switch (stated.is) {
    case 'exact':
      return put(stated.value)
    case 'about':
      return `~${put(stated.value)}`
    case 'below':
      return `<${put(stated.limit)}`
    case 'above':
      return `>${put(stated.limit)}`
    case 'between':
      return `${put(stated.low)} to ${put(stated.high)}`
    case 'not detected':
      return 'not detected'
  }
}
