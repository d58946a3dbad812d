import type { Avoided, Commissioning, Condition, ConditionName, Deed, Peak } from './answer.ts'

/** How dates and numbers are written where the words are shown. */
export interface Writing {
  readonly date: (day: number) => string
  readonly number: (value: number) => string
}

export interface Told {
  readonly says: string
  readonly why: string
  /** Stands before what it concerns. */
  readonly caution?: string
}

/** What must be so before the first animals, and why it is asked. */
export const conditionWords: Readonly<Record<ConditionName, Pick<Told, 'says' | 'why'>>> = {
  ammonia_reads_nothing: {
    says: 'Ammonia reads nothing for days',
    why: 'Ammonia poisons animals. One reading of nothing may be chance; readings over days are not.',
  },
  un_ionised_ammonia_low: {
    says: 'Hardly any of the ammonia is poisonous',
    why: 'Only its un-ionised part poisons. That part grows with pH and warmth, and the kit may read too low.',
  },
  nitrite_near_nothing: {
    says: 'Nitrite next to nothing',
    why: 'In sea water nitrite itself does little harm, but it shows that bacteria which use it up are still few.',
  },
  ammonia_challenge_cleared: {
    says: 'A dose of ammonia gone in time',
    why: 'It shows what the bacteria can do, and not only that there is nothing for them.',
  },
  rock_cured: {
    says: 'Rock gives off next to nothing',
    why: 'What died in the rock goes on rotting, and phosphate comes out of it again after each water change.',
  },
  nitrate_under_limit: {
    says: 'Nitrate where corals are kept',
    why: 'What a start-up leaves in the water feeds the first algae.',
  },
  phosphate_under_limit: {
    says: 'Phosphate where corals are kept',
    why: 'What a start-up leaves in the water feeds the first algae, and rock stores it for later.',
  },
  salinity_and_temperature_steady: {
    says: 'Salinity and temperature steady for a week',
    why: 'Animals that have just travelled bear no swings.',
  },
  film_showing: {
    says: 'A film of diatoms or green algae shows',
    why: 'The first grazers need something to eat.',
  },
}

export const stateWords: Readonly<Record<Condition['state'], string>> = {
  met: 'yes',
  open: 'not yet',
  'not read': 'not read lately',
  look: 'look for yourself',
}

/** When the first animals may come. */
export function verdictWords({ readyNow, ready, until }: Commissioning, { date }: Writing): string {
  if (readyNow)
    return `Ready for the first few animals since ${date(ready.middle)}, once what you see with your own eyes is as it should be.`
  if (!Number.isFinite(ready.middle))
    return `Not ready, and as it stands not before ${date(until)} in most of the simulated tanks.`
  const last = Number.isFinite(ready.high) ? date(ready.high) : `after ${date(until)}`
  return `Not ready. It may be on ${date(ready.middle)} (nine in ten: ${date(ready.low)} to ${last}), if you do what stands below until then.`
}

/** Who tells of a peak. */
export const peakWords = {
  readings: 'by your readings',
  model: 'by the model',
} as const satisfies Record<Peak['by'], string>

/** What is read or reckoned of a condition. */
export function shownWords({ name, shown }: Condition, { date, number }: Writing): string {
  if (shown === undefined) return ''
  const { value, unit, day, by, belowDetection } = shown
  if (name === 'rock_cured') return `cured in ${number(100 * value)} % of the simulated tanks`
  const amount = `${belowDetection ? 'under ' : ''}${number(value)} ${unit}`
  return by === 'reading' ? `${amount}, ${date(day)}` : `${amount}, by the model`
}

/** What is asked of it. */
export function askedWords({ name, limits }: Condition, { number }: Writing): string {
  const [first, second, third, fourth] = limits.map(({ value, unit }) => `${number(value)} ${unit}`)
  switch (name) {
    case 'ammonia_reads_nothing':
      return `at most ${first} for ${second}`
    case 'ammonia_challenge_cleared':
      return `at least ${first}, gone within ${second}`
    case 'rock_cured':
      return `after a change of all water, ${fourth} in the dark: ammonia at most ${first}, rise under ${second} and ${third}`
    default:
      return first === undefined ? '' : `at most ${first}`
  }
}

const burns =
  'Ammonium chloride and ammonia burn eyes and airways. Wear gloves and glasses, keep them from children, and read the label.'
const toTheSea =
  'What comes off the rock, and the water it lay in, goes where local rules send it, never into the sea.'

/** A deed of what to do next. */
export function deedWords(deed: Deed, { number }: Writing): Told {
  switch (deed.name) {
    case 'spare animals':
      return {
        says: 'Feed little and change much water at once, matched in temperature and salinity.',
        why: 'Animals live in it already, and ammonia poisons them. Sick animals are for a veterinarian.',
      }
    case 'test':
      return {
        says: `Test ${listed(deed.quantities)}.`,
        why: 'Nobody has read it of late, and what the model makes of it is no reading.',
      }
    case 'test often':
      return {
        says: `Test ${listed(deed.quantities)} every two or three days, and wait.`,
        why: 'Bacteria double in a day or more. Nothing you add replaces the time.',
      }
    case 'cure':
      return {
        caution: toTheSea,
        says: `Keep it dark, change ${number(100 * deed.share)} % of the water each week, and let ${number(deed.media_g)} g of ferric media bind phosphate.`,
        why: 'The rock still gives something off. In the dark it feeds no algae, and what is taken out does not come back.',
      }
    case 'dose':
      return {
        caution: burns,
        says: `Dissolve ${number(deed.mass_g)} g of ammonium chloride in it, which is ${number(deed.rise)} mg/L N. Test ammonia a day and two days later.`,
        why: 'Ammonia has gone. A dose shows whether the bacteria take away what animals will give off.',
      }
    case 'change':
      return {
        says: `Change ${number(100 * deed.share)} % of the water, matched in temperature and salinity, and test nitrate and phosphate the day after.`,
        why: 'The bacteria are there. What is left in the water would feed algae before anything eats them.',
      }
    case 'change first':
      return {
        says: `Change ${number(100 * deed.share)} % of the water first, matched in temperature and salinity.`,
        why: 'The first animals then come into clean water.',
      }
    case 'first few':
      return {
        says: 'Then a few grazers of film, accustomed slowly, if there is film to eat. More in lots, weeks apart.',
        why: 'The bacteria grow with what they are given, and lag behind by days.',
      }
    case 'look':
      return {
        says: 'Test ammonia on the days after.',
        why: 'Each lot gives off more than the one before.',
      }
  }
}

/** What to leave, and why. */
export const avoidedWords: Readonly<Record<Avoided, Pick<Told, 'says' | 'why'>>> = {
  animals: {
    says: 'Add no animal yet, not one to start the tank with.',
    why: 'Not all that keeps it alive is shown.',
  },
  'dose over animals': {
    says: 'Never dose ammonia over animals, and add no further ones yet.',
    why: 'A dose would poison them.',
  },
  light: {
    says: 'Leave the lamp off.',
    why: 'Light now feeds algae before there is anything to eat them.',
  },
  'acid or bleach': {
    says: 'Put no acid and no bleach on rock with life on it, and never mix the two.',
    why: 'They kill what you want to keep, and together they give off a poisonous gas.',
  },
}

function listed(words: readonly string[]): string {
  const last = words.at(-1) ?? ''
  return words.length < 2 ? last : `${words.slice(0, -1).join(', ')} and ${last}`
}
