import { bedOfAlgae, outside } from '../accounts/index.ts'
import { amount, carry, fact, process, setting } from '../declare/index.ts'
import { type CultivatedBed, carbonOfAlga, namedBeds, ofAlga } from '../processes/cultivated-beds.ts'

/** Settings of a harvest, by bed: drained wet mass taken, g; or 1 where the mat was scraped without a weight. */
export const harvestedSetting = (bed: string): string => `harvest ${bed}`
export const scrapedSetting = (bed: string): string => `scraped ${bed}`

/** What the keeper weighed and dried counts before the table. */
const known = ({ item }: CultivatedBed) =>
  item.kind === 'refugium' && item.dry_fraction !== undefined
    ? { low: item.dry_fraction, typical: item.dry_fraction, high: item.dry_fraction }
    : undefined

/** Dry mass of wet, which the start of a bed reads too. */
export const dryOfWet = fact<CultivatedBed>(ofAlga('dw'), '1', known)

export const harvest = process<CultivatedBed>({
  id: 'harvest',
  title: 'Harvest',
  says: 'Algae taken out of a refugium or off a screen leave the system with all they hold.',
  source: 'mass balance',
  event: true,
  each: namedBeds,
  reads: {
    carbon: amount(({ id }) => bedOfAlgae(id), 'C'),
    wet: setting(
      ({ id }) => harvestedSetting(id),
      'g',
      () => 0,
    ),
    scraped: setting(
      ({ id }) => scrapedSetting(id),
      '1',
      () => 0,
    ),
  },
  parameters: { carbonContent: carbonOfAlga, dry: dryOfWet, takenShare: fact('turf.taken_share', '1') },
  // More than there is cannot be taken.
  transfers: [
    carry({
      from: ({ id }) => bedOfAlgae(id),
      to: ({ kind }) => (kind === 'refugium' ? outside.refugiumHarvest : outside.scrubberHarvest),
      atoms: ['N', 'P', 'C'],
      rate: 'least(part(wet * dry * carbonContent, carbon) + scraped * takenShare, 1)',
    }),
  ],
})
