import { type FactsOfSystem, type FeedKind, feedKind } from '@holdfast/facts'
import { convert } from '@holdfast/quantities'
import { animals, bed, outside, water } from '../accounts/index.ts'
import { amount, fact, process, setting, split } from '../declare/index.ts'
import type { Feed, System } from '../system.ts'

interface Fed {
  readonly system: System
  readonly feed: Feed
  readonly index: number
}

/** Setting that holds the daily ration of a feed, g as fed. */
export const rationSetting = (index: number): string => `feed ${index}`

/** What all feeds bring, for what goes by it. */
export const fedNitrogen = 'fed nitrogen'
export const fedPhosphorus = 'fed phosphorus'

/** A feed the catalogue has no name for is taken to have the carbon and the losses of pellets. */
const kindOf = ({ feed }: Fed): FeedKind => feedKind(feed.kind) ?? pellet

/** What the ledger says of feeds whose nutrients nobody knows. */
export const feedsTakenForOthers = ({ feeds }: System): readonly string[] =>
  feeds
    .filter(
      ({ kind, N_mass_fraction, P_mass_fraction }) =>
        feedKind(kind) === undefined && (N_mass_fraction === undefined || P_mass_fraction === undefined),
    )
    .map(({ kind }) => `nutrients of ${kind}: taken for those of dry pellets`)

type Nutrient = 'N' | 'P' | 'C'

/** What the keeper tells of a feed, as share of it as fed. */
const told = ({ feed }: Fed, atom: Nutrient): number | undefined => feed[`${atom}_mass_fraction`]

/** Of a nutrient that nobody told and the catalogue has per dry mass, the dry share; else the feed as fed. */
const shareOf =
  (atom: Nutrient) =>
  (fed: Fed, facts: FactsOfSystem): number => {
    const { basis, dry } = kindOf(fed)
    if (basis === 'as fed' || dry === undefined || told(fed, atom) !== undefined) return 1
    return fed.feed.dry_fraction ?? facts.typical(dry)
  }

/** µmol of a nutrient in a gram: as told, else as the catalogue has it. */
const content = (atom: Nutrient) =>
  fact<Fed>(
    (fed) => kindOf(fed)[atom],
    'µmol g⁻¹',
    (fed) => {
      const fraction = told(fed, atom)
      return fraction === undefined ? undefined : exactly(convert(fraction, `g ${atom} g⁻¹`, 'µmol g⁻¹'))
    },
  )

const exactly = (value: number) => ({ low: value, typical: value, high: value })

/** Of fish whose adult size and mass are told; others count as grown. */
const cubedLengths = ({ animals: kept }: System): number =>
  kept
    .filter(({ role, mass_g }) => role === 'fish' && mass_g !== undefined)
    .reduce(
      (sum, { count, adult_size_cm = 0 }) => sum + count * adult_size_cm * adult_size_cm * adult_size_cm,
      0,
    )

const pellet: FeedKind = pelletKind()

function pelletKind(): FeedKind {
  const found = feedKind('pellet')
  if (!found) throw new Error('The catalogue of feeds lacks pellets.')
  return found
}

export const feeding = process<Fed>({
  id: 'feeding',
  title: 'Feeding',
  says: 'What is fed is eaten or not; of what is eaten a little becomes fish, most comes back dissolved, the rest as waste. The bone in it passes the fish and stays as mineral.',
  source: 'mass balance',
  each: (system) => system.feeds.map((feed, index) => ({ name: feed.kind, of: { system, feed, index } })),
  reads: {
    ration: setting(
      ({ index }) => rationSetting(index),
      'g d⁻¹',
      ({ feed }) => feed.g_per_day,
    ),
    held: amount(animals.fish, 'N'),
    cubedLengths: setting('cubed lengths of fish', 'cm³', ({ system }) => cubedLengths(system)),
    mouths: setting('mouths', '1', ({ system }) => (system.animals.length > 0 ? 1 : 0)),
    shareN: setting(({ index }) => `feed ${index} N share`, '1', shareOf('N')),
    shareP: setting(({ index }) => `feed ${index} P share`, '1', shareOf('P')),
    shareC: setting(({ index }) => `feed ${index} C share`, '1', shareOf('C')),
  },
  parameters: {
    nitrogen: content('N'),
    phosphorus: content('P'),
    carbon: content('C'),
    // A ration that nobody told is that of a starting point, and may be well off.
    asTold: fact('feed.untold', '1', ({ feed }) => (feed.untold ? undefined : exactly(1))),
    uneaten: fact((fed) => kindOf(fed).uneaten, '1'),
    digestedN: fact('fish.digest_n', '1'),
    digestedP: fact('fish.digest_p', '1'),
    digestedC: fact('fish.digest_c', '1'),
    adultN: fact('fish.retain_n.adult', '1'),
    adultP: fact('fish.retain_p.adult', '1'),
    adultC: fact('fish.retain_c.adult', '1'),
    youngN: fact('fish.retain_n.growing', '1'),
    youngP: fact('fish.retain_p.growing', '1'),
    bodyN: fact('fish.body_n', 'µmol g⁻¹'),
    perLength: fact('fish.mass_per_length', 'g cm⁻³'),
    asAmmonia: fact('fish.tan_share', '1'),
    leached: fact('min.leach_p.faeces', '1'),
    bone: fact('fish.faeces_bone', '1'),
  },
  gathers: {
    [fedNitrogen]: { key: () => 'all feeds', sum: 'ration * asTold * shareN * nitrogen', unit: 'µmol d⁻¹' },
    [fedPhosphorus]: {
      key: () => 'all feeds',
      sum: 'ration * asTold * shareP * phosphorus',
      unit: 'µmol d⁻¹',
    },
  },
  terms: {
    eaten: { is: 'mouths * (1 - uneaten)', unit: '1' },
    // How far from grown the fish are, of which adult size and mass are told: 1 for fry, 0 for adults.
    grownN: { is: 'perLength * cubedLengths * bodyN', unit: 'µmol' },
    growing: { is: 'part(positive(grownN - held), grownN)', unit: '1' },
    keptN: { is: 'adultN + (youngN - adultN) * growing', unit: '1' },
    keptP: { is: 'adultP + positive(least(youngP, digestedP) - adultP) * growing', unit: '1' },
    keptC: { is: 'adultC + (youngN - adultN) * growing', unit: '1' },
  },
  transfers: [
    split({
      atom: 'N',
      from: outside.feed,
      rate: 'ration * asTold * shareN * nitrogen',
      into: [
        { to: animals.fish, share: 'eaten * keptN' },
        { to: water.ammonia, share: 'eaten * (digestedN - keptN) * asAmmonia' },
        { to: water.labile, share: 'eaten * (digestedN - keptN) * (1 - asAmmonia)' },
        { to: water.particles, share: 'rest' },
      ],
    }),
    split({
      atom: 'P',
      from: outside.feed,
      rate: 'ration * asTold * shareP * phosphorus',
      into: [
        { to: animals.fish, share: 'eaten * keptP' },
        { to: water.phosphate, share: 'eaten * (digestedP - keptP + (1 - digestedP) * leached)' },
        { to: bed.mineral, share: 'eaten * (1 - digestedP) * (1 - leached) * bone' },
        { to: water.particles, share: 'rest' },
      ],
    }),
    split({
      atom: 'C',
      from: outside.feed,
      rate: 'ration * asTold * shareC * carbon',
      into: [
        { to: animals.fish, share: 'eaten * keptC' },
        { to: outside.inorganicCarbon, share: 'eaten * (digestedC - keptC)' },
        { to: water.particles, share: 'rest' },
      ],
    }),
  ],
})
