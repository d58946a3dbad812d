import type { BookLine, Effect, Planned, Turnover } from './answer.ts'
import { bookLines } from './books.ts'
import type { Candidate } from './candidates.ts'
import type { Crew } from './crew.ts'
import { starving, type TrialRun, trialRun } from './trial-run.ts'
import type { Setting, Tried } from './tried.ts'

/**
 * A tried crew as an answer has it.
 *
 * @param lent  of those that come, how many are lent by another system and not bought, by taxon
 */
export const told = (
  setting: Setting,
  { crew, cost, proved, byHand, toFeed, trial, issues }: Tried,
  lent: ReadonlyMap<string, number> = new Map(),
) => ({
  proved,
  cost,
  crew: crew.numbers.map((one) => planned(one, lent.get(one.animal.taxon) ?? 0, trial, setting)),
  byHand,
  ...(toFeed.length > 0 ? { toFeed } : {}),
  steps: crew.steps,
  check: { crew: trial.crew, issues: issues.map(({ issue }) => issue) },
})

/** What a crew makes of water, algae and books, beside husbandry unchanged. */
export function effectOf(
  { present, facts }: Setting,
  { trial, toFeed }: Tried,
): { readonly effect: Effect; readonly books: readonly BookLine[] } {
  const without = trialRun(present, [])
  const effect: Effect = {
    water: trial.water.map((month, m) => ({ ...month, without: without.water[m] })),
    cover: trial.held.map(({ surface, patch, kind, cover, key }) => ({
      ...{ surface, patch, kind, cover },
      without: without.held.find((place) => place.key === key)?.cover ?? 0,
    })),
  }
  return { effect, books: bookLines(trial.books, without.books, toFeed, facts) }
}

function planned(
  { animal, there, come, leave }: Crew['numbers'][number],
  lent: number,
  trial: TrialRun,
  { candidates, facts }: Setting,
): Planned {
  const firstMonthLoss = facts.typical('crew.first_month_loss')
  const candidate = candidates.find((one) => one.animal.taxon === animal.taxon)
  // To the nearest: one that comes alone is replaced when it dies, and has no room for a second beside it.
  const order = Math.max(0, Math.round((come - lent) / (1 - firstMonthLoss)))
  const { low, high } = animal.price_usd
  const fate = trial.crew.find(({ taxon }) => taxon === animal.taxon)
  const lostInYear = Math.max(0, there + come - leave - (fate?.livingAfterYear ?? 0))
  return {
    taxon: animal.taxon,
    tradeName: animal.tradeName,
    group: animal.group,
    there,
    come,
    leave,
    order,
    price_usd: { low: order * low, high: order * high },
    lostInYear,
    turnover: turnoverOf(
      { lost: lostInYear, early: come * firstMonthLoss, hungry: (fate?.hunger ?? 0) > starving },
      there + come - leave,
      animal,
      candidate,
    ),
    eats_g_week: 7 * (fate?.eats_g_d ?? 0),
    cautions: candidate?.cautions ?? [],
  }
}

/**
 * Shares the losses of the trial out by cause: of who went hungry, what neither the first month, age nor tank mates
 * explain is hunger; nobody is lost to it up to half of the reserve.
 */
function turnoverOf(
  { lost, early, hungry }: { readonly lost: number; readonly early: number; readonly hungry: boolean },
  animals: number,
  { annualMortality }: Candidate['animal'],
  { hunted = 0 }: Partial<Candidate> = {},
): Turnover {
  const firstMonth = Math.min(lost, early)
  const rates = [annualMortality, hunted].map((chance) => -Math.log(1 - Math.min(chance, 0.99)))
  const both = rates[0] + rates[1]
  const inAYear = lost - firstMonth
  const later = hungry ? Math.min(inAYear, (animals - firstMonth) * (1 - Math.exp(-both))) : inAYear
  const mates = both > 0 ? (later * rates[1]) / both : 0
  return {
    firstMonth,
    age: later - mates,
    mates,
    hunger: inAYear - later,
    ...(inAYear > 0 ? { oneEvery_days: 365 / inAYear } : {}),
  }
}
