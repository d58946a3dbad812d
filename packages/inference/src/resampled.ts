import type { Past } from './past.ts'

/**
 * So many members that carry the weight of all, by systematic resampling (Kitagawa 1996, J. Comput. Graph. Stat.
 * 5:1, as recalled); all of them where they are no more.
 */
export function resampled(known: Past, count: number): Past {
  const { members, weights } = known
  if (members.length <= count) return known
  const sums: number[] = []
  for (const weight of weights.of) sums.push((sums.at(-1) ?? 0) + weight)
  const picked = Array.from({ length: count }, (_, at) => {
    const found = sums.findIndex((sum) => sum >= (at + 0.5) / count)
    return members[found < 0 ? members.length - 1 : found]
  })
  return {
    ...known,
    members: picked,
    weights: { of: picked.map(() => 1 / count), effective: count, tempering: weights.tempering },
  }
}
