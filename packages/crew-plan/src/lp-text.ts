import type { Programme, Row } from './programme.ts'

/**
 * A programme in the LP format that HiGHS, GLPK and CBC all read: columns are c0, c1, ..., rows r0, r1, ...
 * A row with two ends is written twice, for not every reader takes ranges.
 */
export function lpText({ columns, rows }: Programme): string {
  // Every column stands in the cost, so that readers number them as we do.
  const cost = columns.map(({ cost }, c) => `${signed(cost)} c${c}`)
  const constraints = rows.flatMap(({ lower, upper, terms }, r) => [
    ...(Number.isFinite(upper) ? [`r${r}u: ${sum(terms)} <= ${upper}`] : []),
    ...(Number.isFinite(lower) ? [`r${r}l: ${sum(terms)} >= ${lower}`] : []),
  ])
  const bounds = columns.flatMap(({ lower, upper }, c) => {
    if (lower === upper) return [`c${c} = ${lower}`]
    if (upper === Number.POSITIVE_INFINITY) return lower === 0 ? [] : [`c${c} >= ${lower}`]
    return [`${lower} <= c${c} <= ${upper}`]
  })
  const whole = columns.flatMap((column, c) => (column.whole ? [`c${c}`] : []))
  return [
    'Minimize',
    `cost: ${lines(cost)}`,
    'Subject To',
    ...constraints,
    'Bounds',
    ...bounds,
    ...(whole.length > 0 ? ['General', lines(whole)] : []),
    'End',
    '',
  ].join('\n')
}

const signed = (factor: number): string => `${factor < 0 ? '-' : '+'} ${Math.abs(factor)}`

const sum = (terms: Row['terms']): string =>
  lines(terms.map(([column, factor]) => `${signed(factor)} c${column}`))

/** Readers limit the length of a line. */
function lines(words: readonly string[]): string {
  const out: string[] = []
  for (let at = 0; at < words.length; at += 8) out.push(words.slice(at, at + 8).join(' '))
  return out.join('\n ')
}
