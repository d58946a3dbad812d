import type { Band, HandWork, Planned, Water } from '@holdfast/crew-plan'
import type { ComputedFigure, Derivation } from '../../figure/computed.ts'
import { takenIn } from '../../figure/entry-ids.ts'
import { plain } from '../../figure/numbers.ts'
import type { SystemData } from '../../shell/system-data.ts'
import type { CrewTold } from '../../worker/answers.ts'
import { several } from '../counted.ts'
import { kindName, placeName } from '../reach/words.ts'
import type { Plan } from './plan.tsx'

export interface CrewGround {
  readonly plan: Plan
  readonly told: CrewTold
  readonly data: SystemData
}

type Step = Derivation['steps'][number]
type About = Pick<Planned, 'taxon' | 'tradeName'>

const short = (value: number): string => plain(Number(value.toPrecision(2)))

/** What all animals of a taxon eat of algae three months on; undefined where the trial tells nothing of them. */
export function eatsFigure(one: About, ground: CrewGround): ComputedFigure | undefined {
  const fate = fateOf(one, ground)
  return (
    fate && {
      id: `crew.eats.${one.taxon}`,
      name: `What the ${several(one.tradeName)} eat three months on`,
      ...times(fate.bands.eats_g_d, 7),
      unit: 'g dry a week',
      least: 0.01,
      derivation: () =>
        derived(
          ground,
          [
            {
              formula: 'a week = 7 d × what all of them eat in a day, in the thirteenth week',
              withValues: `${short(7 * fate.eats_g_d)} g = 7 d × ${short(fate.eats_g_d)} g d⁻¹`,
            },
          ],
          ['grazing'],
          one.taxon,
        ),
    }
  )
}

/** Share of its reserve that an animal has used up at the leanest, per cent. */
export function hungerFigure(one: About, ground: CrewGround): ComputedFigure | undefined {
  const fate = fateOf(one, ground)
  if (!fate) return undefined
  const months = fate.months.map((used) => `${Math.round(100 * used)}`).join(', ')
  return {
    id: `crew.hunger.${one.taxon}`,
    name: `Share of its reserve that a ${one.tradeName} uses up at the leanest`,
    ...times(fate.bands.hunger, 100),
    unit: '%',
    least: 1,
    derivation: () =>
      derived(
        ground,
        [
          {
            formula: 'the most that is used up on the days looked at, the end of each month among them',
            withValues: months === '' ? '' : `at the end of each month: ${months} %`,
          },
        ],
        ['crew-turnover'],
        one.taxon,
      ),
  }
}

/** Animals of a taxon that a year costs. */
export function lossFigure(one: Planned, ground: CrewGround): ComputedFigure | undefined {
  const fate = fateOf(one, ground)
  if (!fate) return undefined
  const { there, come, leave, lostInYear } = one
  const animals = there + come - leave
  const lost = (living: number): number => Math.max(0, animals - living)
  const { low, value, high } = fate.bands.livingAfterYear
  return {
    id: `crew.lost.${one.taxon}`,
    name: `${several(one.tradeName)} that a year costs`,
    value: lost(value),
    low: lost(high),
    high: lost(low),
    unit: 'animals',
    least: 0.1,
    derivation: () =>
      derived(
        ground,
        [
          {
            formula: 'lost = there + come − given away − living after a year',
            withValues: `${plain(lost(value))} = ${there} + ${come} − ${leave} − ${plain(value)}`,
          },
          {
            formula: 'lost = in the first month + by age + to tank mates + by hunger',
            withValues: `${plain(lostInYear)} = ${causes(one)
              .map(([, count]) => plain(count))
              .join(' + ')}`,
          },
        ],
        ['crew-turnover', 'predation'],
        one.taxon,
      ),
  }
}

/** Why animals are lost in a year, with how many. */
export const causes = ({
  turnover: { firstMonth, age, mates, hunger },
}: Planned): readonly (readonly [cause: string, count: number])[] => [
  ['in the first month', firstMonth],
  ['by age', age],
  ['to tank mates', mates],
  ['by hunger', hunger],
]

/** Animals to be ordered in all, so that about as many are left after the first month as are to come. */
export function orderFigure(one: Planned, ground: CrewGround): ComputedFigure {
  const loss = ground.told.processes
    .flatMap(({ facts }) => facts)
    .find(({ id }) => id === 'crew.first_month_loss')
  const inAll = (share: number): number => Math.max(one.come, Math.round(one.come / (1 - share)))
  const each = (all: number): number => all / one.order
  const price = one.order > 0 && { low: each(one.price_usd.low), high: each(one.price_usd.high) }
  const most = loss ? Math.max(one.order, inAll(loss.high)) : one.order
  return {
    id: `crew.order.${one.taxon}`,
    name: `${several(one.tradeName)} to be ordered`,
    value: one.order,
    low: loss ? Math.min(one.order, inAll(loss.low)) : one.order,
    high: most,
    unit: most === 1 ? 'animal' : 'animals',
    least: 1,
    derivation: () => ({
      ...derived(
        ground,
        [
          {
            formula: 'ordered = come ÷ (1 − lost in the first month), to the nearest animal',
            withValues: loss ? `${one.order} ≈ ${one.come} ÷ (1 − ${plain(loss.typical)})` : '',
          },
          ...(price
            ? [
                {
                  formula: 'price = ordered × price of one',
                  withValues: `${one.order} × ${plain(price.low)} to ${plain(price.high)} US dollars, as shops ask`,
                },
              ]
            : []),
        ],
        ['crew-turnover'],
        one.taxon,
      ),
      says: 'How many come is what the cheapest plan has; how many of them are lost at first is a fact.',
    }),
  }
}

const waterNames = {
  nitrate_mg_L: { key: 'nitrate', name: 'Nitrate', unit: 'mg/L NO3', least: 0.1 },
  phosphate_mg_L: { key: 'phosphate', name: 'Phosphate', unit: 'mg/L PO4', least: 0.001 },
} as const

/** Nitrate or phosphate so many months on, with this crew or without it. */
export function waterFigure(
  what: keyof typeof waterNames,
  month: number,
  water: Water,
  crew: 'with' | 'without',
  ground: CrewGround,
): ComputedFigure {
  const { key, name, unit, least } = waterNames[what]
  return {
    id: `crew.${key}.${month}.${crew}`,
    name: `${name} after ${month} months, ${crew} this plan`,
    ...water.bands[what],
    unit,
    least,
    derivation: () => ({
      ...derived(
        ground,
        [
          {
            formula: `${key} in the water ÷ the water of all vessels, ${30 * month} days on`,
            withValues: `${short(water[what])} ${unit} = median of the tanks`,
          },
        ],
        [],
        '',
      ),
      processes: ground.told.processes.filter(({ accounts }) =>
        accounts.some((account) => account.startsWith(`water.${key}`)),
      ),
    }),
  }
}

/** What a hand takes out at a place in a week. */
export function handFigure(work: HandWork, ground: CrewGround): ComputedFigure {
  const { surface, patch, kind, band } = work
  return {
    id: `crew.hand.${surface}.${patch}.${kind}`,
    name: `${kindName(kind)} on ${placeName(work)}, for your hand`,
    ...band,
    unit: 'g dry a week',
    least: 0.01,
    derivation: () =>
      derived(
        ground,
        [
          {
            formula: 'a week = the share that the hand takes × what stands there three months on',
            withValues: `${short(work.grams_dry_per_week)} g = median of the tanks`,
          },
        ],
        ['algal-growth'],
        `${kind} on ${surface}, ${patch}`,
      ),
  }
}

const fateOf = ({ taxon }: About, { plan }: CrewGround): Plan['check']['crew'][number] | undefined =>
  plan.check.crew.find((fate) => fate.taxon === taxon)

const times = ({ value, low, high }: Band, factor: number): Band => ({
  value: value * factor,
  low: low * factor,
  high: high * factor,
})

function derived(
  { told: { worlds, processes }, data }: CrewGround,
  steps: readonly Step[],
  from: readonly string[],
  instance: string,
): Derivation {
  return {
    says: `${worlds} simulated tanks, which your readings weigh, live a year with this crew and your hand; the figure is their median. So few tell the ends only roughly.`,
    steps,
    processes: processes.filter(
      (one) => from.some((each) => one.process.startsWith(each)) && one.instance.includes(instance),
    ),
    facts: [],
    entries: takenIn(data),
  }
}
