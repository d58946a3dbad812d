/** What grazers eat in a day by the catalogue, beside what was measured of them or of their kin. */
import { consumptionId, fact, grazers } from '@holdfast/facts'
import { type Check, judged } from '../check.ts'
import measured from './eaten.json' with { type: 'json' }

/** A published amount. `to_g_dry`: least and most by which it becomes g of dry algae a day, per animal or per g of body. */
export type Eaten = (typeof measured)[number]

/** g of dry algae per animal and day that a published amount may be, for an animal as heavy as the catalogue's. */
export function published({
  taxon,
  low,
  high,
  to_g_dry: [least, most],
  per,
}: Eaten): readonly [number, number] {
  const animal = grazers().find((one) => one.taxon === taxon)
  if (animal === undefined) throw new Error(`${taxon} is no taxon of the catalogue.`)
  const bodies = per === 'animal' ? 1 : animal.wetMass_g
  return [low * least * bodies, high * most * bodies]
}

/** One line for each: the catalogue's band has to reach the published one, or the miss has its reason. */
export function eatenInADay(): readonly Check[] {
  return measured.map((one) => {
    const [least, most] = published(one)
    const { low, typical, high } = fact(consumptionId(one.taxon))
    const miss = 'miss' in one ? ` ${one.miss}` : ''
    return judged(
      `${one.taxon} eats`,
      low <= most && high >= least,
      `${grams(low)}, ${grams(typical)}, ${grams(high)} g dry a day; published of ${one.animal}: ${grams(least)} to ${grams(most)} (${one.low} to ${one.high} ${one.unit}; ${one.because}). ${one.source}, ${one.provenance}.${miss}`,
      miss !== '',
    )
  })
}

const grams = (value: number): string => String(Number(value.toPrecision(2)))
