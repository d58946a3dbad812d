import type { Fact } from './fact.ts'
import { type Neighbour, neighbours, type Threat } from './neighbour.ts'

/** Id of the fact that holds how fast a neighbour takes those of the crew that it gets, such as neighbour.coris_wrasses.takes. */
export const predationId = (neighbour: string): string => `neighbour.${neighbour}.takes`

/** A chance of one within the year is a rate of 4.6 a year: one in a hundred is left. */
const mostPerYear = 4.6
const perDay = (severity: number): number =>
  Math.min(mostPerYear, severity < 1 ? -Math.log(1 - severity) : mostPerYear) / 365

const rounded = (value: number): number => Number(value.toPrecision(10))

/** How a neighbour threatens the crew as a predator; undefined where it does not. */
export const hunting = ({ threats }: Neighbour): Threat | undefined =>
  threats.find(({ role }) => role === 'predator of crew')

function predation(neighbour: Neighbour): readonly Fact[] {
  const threat = hunting(neighbour)
  if (!threat) return []
  const typical = perDay(threat.severity)
  return [
    {
      id: predationId(neighbour.key),
      title: `Loss of exposed animals to ${neighbour.title}`,
      unit: 'd⁻¹',
      low: rounded(typical / 2),
      typical: rounded(typical),
      high: rounded(typical * 2),
      source: threat.source,
      ...(threat.also ? { also: threat.also } : {}),
      provenance: 'estimate',
      holds: `${threat.whom.join(', ')}; ${threat.condition}`,
      note: `A judgement that ${threat.severity} are lost within a year; a factor of two to either side is ours.`,
    },
  ]
}

/** The rates of all that eat of the crew, in the order of the neighbours. */
export const neighbourFacts: readonly Fact[] = neighbours().flatMap(predation)
