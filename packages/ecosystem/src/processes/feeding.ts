import { fact as catalogueFact, type FeedKind, feedKind } from '@holdfast/facts'
import { convert } from '@holdfast/quantities'
import { animals, outside, water } from '../accounts/index.ts'
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

/** Of a feed whose carbon is told per dry mass, the dry share; else the feed is taken as fed. */
const dryShare = (fed: Fed): number => {
  const { basis, dry } = kindOf(fed)
  if (basis === 'as fed' || dry === undefined || fed.feed.C_mass_fraction !== undefined) return 1
  return fed.feed.dry_fraction ?? catalogueFact(dry).typical
}

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
  says: 'What is fed is eaten or not; of what is eaten a little becomes fish, most comes back dissolved, the rest as waste.',
  source: 'mass balance',
  each: (system) => system.feeds.map((feed, index) => ({ name: feed.kind, of: { system, feed, index } })),
  reads: {
    ration: setting(
      ({ index }) => rationSetting(index),
      'g d⁻¹',
      ({ feed }) => feed.g_per_day,
    ),
    nitrogen: setting(
      ({ index }) => `feed ${index} N`,
      'µmol g⁻¹',
      ({ feed }) => convert(feed.N_mass_fraction, 'g N g⁻¹', 'µmol g⁻¹'),
    ),
    phosphorus: setting(
      ({ index }) => `feed ${index} P`,
      'µmol g⁻¹',
      ({ feed }) => convert(feed.P_mass_fraction, 'g P g⁻¹', 'µmol g⁻¹'),
    ),
    held: amount(animals.fish, 'N'),
    cubedLengths: setting('cubed lengths of fish', 'cm³', ({ system }) => cubedLengths(system)),
    mouths: setting('mouths', '1', ({ system }) => (system.animals.length > 0 ? 1 : 0)),
    dry: setting(({ index }) => `feed ${index} dry`, '1', dryShare),
  },
  parameters: {
    carbon: fact(
      (fed) => kindOf(fed).C,
      'µmol g⁻¹',
      ({ feed }) =>
        feed.C_mass_fraction === undefined
          ? undefined
          : exactly(convert(feed.C_mass_fraction, 'g C g⁻¹', 'µmol g⁻¹')),
    ),
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
  },
  gathers: {
    [fedNitrogen]: { key: () => 'all feeds', sum: 'ration * nitrogen', unit: 'µmol d⁻¹' },
    [fedPhosphorus]: { key: () => 'all feeds', sum: 'ration * phosphorus', unit: 'µmol d⁻¹' },
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
      rate: 'ration * nitrogen',
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
      rate: 'ration * phosphorus',
      into: [
        { to: animals.fish, share: 'eaten * keptP' },
        { to: water.phosphate, share: 'eaten * (digestedP - keptP + (1 - digestedP) * leached)' },
        { to: water.particles, share: 'rest' },
      ],
    }),
    split({
      atom: 'C',
      from: outside.feed,
      rate: 'ration * dry * carbon',
      into: [
        { to: animals.fish, share: 'eaten * keptC' },
        { to: outside.inorganicCarbon, share: 'eaten * (digestedC - keptC)' },
        { to: water.particles, share: 'rest' },
      ],
    }),
  ],
})

const exactly = (value: number) => ({ low: value, typical: value, high: value })
