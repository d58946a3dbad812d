import { facts } from './catalogue.ts'
import type { Fact } from './fact.ts'

/** How wide a band is: high over low, from the middle where low is zero. */
const width = ({ low, typical, high }: Fact): number => (low > 0 ? high / low : (high / typical) ** 2)

/**
 * The facts that rest on nobody's measurement and leave most open: estimates that a formula reads,
 * widest bands first. What is zero in the middle or may be negative has no such width and is left out.
 */
export const weakest = (count: number): readonly Fact[] =>
  facts()
    .filter(
      ({ provenance, typical, low, aside }) =>
        provenance === 'estimate' && typical > 0 && low >= 0 && aside === undefined,
    )
    .toSorted((a, b) => width(b) - width(a))
    .slice(0, count)
