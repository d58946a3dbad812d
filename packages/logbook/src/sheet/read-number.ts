/** What a cell under a quantity says; numbers as written, in the unit of the column. */
export type CellSays =
  | { readonly says: 'nothing'; readonly odd?: string }
  | { readonly says: 'not detected'; readonly limit: number | null }
  | { readonly says: 'number'; readonly value: number; readonly odd?: string; readonly approximate?: true }
  | { readonly says: 'above'; readonly value: number }
  | { readonly says: 'between'; readonly low: number; readonly high: number }
  | { readonly says: 'not read'; readonly why: string }

const notDetected =
  /^(n\.?\s?d\.?|n\.?\s?n\.?|u\.?d\.?|not detected|undetectable|none detected|nicht nachweisbar|indetectable|non detecte|no detectado|below detection|bdl)$/
const nothing = /^(-+|–|—|n\/a|na|x|\.|\?)$/

/**
 * Reads a cell.
 *
 * @param fits  whether a number, in the unit of the column, can be this quantity at all; it decides
 *   whether a dot in a file with decimal commas is a thousands mark, and the other way round
 */
export function readCell(text: string, decimal: '.' | ',', fits: (value: number) => boolean): CellSays {
  const written = plain(text)
  if (written === '') return { says: 'nothing' }
  if (nothing.test(written)) return { says: 'nothing', odd: `"${text}" stands for a missing value` }
  if (notDetected.test(written)) return { says: 'not detected', limit: null }
  const [, sign = '', rest = ''] =
    /^(<=?|>=?|~|≈|ca\.?\s|about\s|etwa\s|environ\s)?\s*(.*)$/.exec(written) ?? []
  const range = /^([\d.,]+)\s*(?:-|–|to|bis|and|und|et)\s*([\d.,]+)$/.exec(
    rest.replace(/^(between|zwischen|entre)\s+/, ''),
  )
  if (range && sign === '') {
    const [low, high] = [numberOf(range[1], decimal, fits), numberOf(range[2], decimal, fits)]
    if (low && high && low.value < high.value) return { says: 'between', low: low.value, high: high.value }
  }
  const number = numberOf(rest, decimal, fits)
  if (number === undefined) return { says: 'not read', why: `"${text}" is no number` }
  if (sign.startsWith('<')) return { says: 'not detected', limit: number.value }
  if (sign.startsWith('>')) return { says: 'above', value: number.value }
  return { says: 'number', ...number, ...(sign !== '' && { approximate: true as const }) }
}

/** Small letters without accents, so that one list of words serves several languages. */
export function plain(text: string): string {
  return text.trim().toLowerCase().normalize('NFD').replaceAll(/\p{M}/gu, '')
}

function numberOf(
  text: string,
  decimal: '.' | ',',
  fits: (value: number) => boolean,
): { readonly value: number; readonly odd?: string } | undefined {
  const other = decimal === '.' ? ',' : '.'
  const usual = decimal === ',' ? text.replace(',', '.') : text
  if (/^\d*\.?\d+$|^\d+\.$/.test(usual) && !text.includes(other)) return { value: Number(usual) }
  const both = text.replaceAll(other, '').replace(decimal, '.')
  const grouped = /^\d{1,3}([.,]\d{3})+/.test(text) && /^\d+(\.\d+)?$/.test(both)
  if (grouped && text.includes(decimal)) return { value: Number(both) }
  if (!/^\d+[.,]\d+$/.test(text) && !grouped) return undefined
  const asThousands = grouped ? Number(both) : undefined
  const asDecimal = Number(text.replace(',', '.'))
  if (asThousands !== undefined && (fits(asThousands) || !fits(asDecimal))) {
    return { value: asThousands, odd: `"${other}" read as a thousands mark` }
  }
  return { value: asDecimal, odd: `"${other}" read as the decimal sign` }
}
