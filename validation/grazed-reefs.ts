import { fittingCrew, keptAtNumber } from '@holdfast/ecosystem/testing/fitting-crew'
import { ordinaryReef } from '@holdfast/ecosystem/testing/ordinary-reef'
import { run } from '@holdfast/ecosystem/testing/run'
import { tallCover } from '@holdfast/ecosystem/testing/tall-cover'
import { type Check, judged } from './check.ts'

/** Algae taller than this are what keepers call an outbreak, mm. */
const tall_mm = 5

/** The alga that a crew is bought for. */
const alga = 'hair_green'

/**
 * The misses that are known: a drawn crew may fall short, most of all in small tanks, where animals come in whole
 * numbers and no grazing fish or large urchin has room; and where media leave next to no phosphate, hair algae stay
 * short without any mouth.
 */
const gaps: ReadonlySet<string> = new Set(['with a fitting crew, all', 'without a crew, all'])

/** Twenty invented reefs after a year, with a crew by the table of stocking and without: no animal is set for one of them. */
export function grazedReefs(): readonly Check[] {
  const reefs = Array.from({ length: 20 }, (_, n) => {
    const reef = ordinaryReef(n + 1)
    const crew = fittingCrew(reef, alga, n + 1)
    const year = (animals: typeof crew): number => {
      const outcome = run({
        system: { ...reef, animals: [...reef.animals, ...animals] },
        days: 365,
        samples: [],
        opening: { nitrate_mg_L: 8, phosphate_mg_L: 0.06 },
        facts: keptAtNumber(animals),
      })
      return tallCover(outcome, 'rock_face', tall_mm)
    }
    return { volume_L: reef.vessels[0]?.volume_L ?? Number.NaN, grazed: year(crew), ungrazed: year([]) }
  })
  const grazed = reefs.map((reef) => reef.grazed)
  const ungrazed = reefs.map((reef) => reef.ungrazed)
  const held = reefs.filter((reef) => reef.grazed < 0.1)
  const lost = reefs.filter((reef) => reef.grazed >= 0.1)
  const overgrown = ungrazed.filter((share) => share > 0.5).length
  const where = lost.map(({ volume_L }) => `${Math.round(volume_L)} L`).join(', ')
  return [
    outcome(
      'with a fitting crew, median',
      median(grazed) < 0.1,
      `${percent(median(grazed))}, asked under 10 %`,
    ),
    outcome(
      'without a crew, median',
      median(ungrazed) > 0.5,
      `${percent(median(ungrazed))}, asked over 50 %`,
    ),
    outcome(
      'with a fitting crew, all',
      lost.length === 0,
      `under 10 % in ${held.length} of 20; not at ${where}`,
    ),
    outcome('without a crew, all', overgrown === 20, `over 50 % in ${overgrown} of 20`),
  ]
}

const percent = (share: number): string => `${(100 * share).toFixed(0)} %`

function median(values: readonly number[]): number {
  const sorted = [...values].sort((a, b) => a - b)
  const middle = sorted.length / 2
  return ((sorted[Math.floor(middle)] ?? Number.NaN) + (sorted[Math.ceil(middle) - 1] ?? Number.NaN)) / 2
}

const outcome = (what: string, holds: boolean, says: string): Check =>
  judged(`free lit rock under algae over 5 mm after a year ${what}`, holds, says, gaps.has(what))
