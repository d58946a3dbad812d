import { animals, outside, water } from '../accounts/index.ts'
import { amount, fact, process, setting, split } from '../declare/index.ts'
import type { Surface, System } from '../system.ts'
import { ammonia, type InSystem, nitrate, phosphate } from './readings.ts'
import { hoursSetting, lightSetting } from './stands.ts'

export interface LitCorals extends InSystem {
  readonly area_m2: number
  /** The surface whose lamp shines on the corals too. */
  readonly surface: Surface
}

/** Corals stand where the rock is lit, else on the surface with most light. */
function litSurface({ surfaces }: System): Surface | undefined {
  const brightest = (some: readonly Surface[]): Surface | undefined =>
    [...some].sort((a, b) => b.light_umol_m2_s - a.light_umol_m2_s)[0]
  return (
    brightest(surfaces.filter(({ kind }) => kind === 'rock_face' || kind === 'frag_rack')) ??
    brightest(surfaces)
  )
}

export function coralsOf(system: System): readonly { readonly name: string; readonly of: LitCorals }[] {
  const area_m2 = system.corals?.area_m2 ?? 0
  const surface = litSurface(system)
  return area_m2 > 0 && surface ? [{ name: '', of: { system, area_m2, surface } }] : []
}

/** What the ledger says of corals of which nobody knows the light. */
export const coralsLeftOut = (system: System): string | undefined =>
  (system.corals?.area_m2 ?? 0) > 0 && !litSurface(system)
    ? 'coral uptake: no surface with its light is told'
    : undefined

/**
 * Gross uptake would strip a tank; it fills a store and then only replaces what growth dilutes and what is
 * given off. So over months corals keep growth times tissue content.
 */
export const coralUptake = process<LitCorals>({
  id: 'coral-uptake',
  title: 'Uptake by corals',
  says: 'Corals take up ammonium before nitrate, by light, until their stores are full; what they keep is new tissue, and a part goes back as mucus.',
  source: 'grover-2002',
  each: coralsOf,
  reads: {
    nitrogen: amount(animals.corals, 'N'),
    phosphorus: amount(animals.corals, 'P'),
    carbon: amount(animals.corals, 'C'),
    ammonia,
    nitrate,
    phosphate,
    area: setting('area of corals', 'm²', ({ area_m2 }) => area_m2),
    light: setting(
      ({ surface }) => lightSetting(surface.id),
      'µmol photons m⁻² s⁻¹',
      ({ surface }) => surface.light_umol_m2_s,
    ),
    hours: setting(
      ({ surface }) => hoursSetting(surface.id),
      'h d⁻¹',
      ({ surface }) => surface.light_h_per_day,
    ),
    halfDay: setting('half a day', 'h d⁻¹', () => 12),
  },
  parameters: {
    mostAmmonia: fact('coral.nh4', 'µmol m⁻² d⁻¹'),
    halfAmmonia: fact('coral.ks_nh4', 'µmol L⁻¹'),
    mostNitrate: fact('coral.no3', 'µmol m⁻² d⁻¹'),
    halfNitrate: fact('coral.ks_no3', 'µmol L⁻¹'),
    mostPhosphate: fact('coral.po4', 'µmol m⁻² d⁻¹'),
    halfPhosphate: fact('coral.ks_po4', 'µmol L⁻¹'),
    ammoniaFirst: fact('coral.nh4_first', 'µmol L⁻¹'),
    inTheDark: fact('coral.dark', '1'),
    saturation: fact('coral.light_saturation', 'µmol photons m⁻² s⁻¹'),
    tissue: fact('coral.tissue', 'g m⁻²'),
    growth: fact('coral.growth', 'd⁻¹'),
    contentN: fact('coral.growth_n', 'µmol g⁻¹'),
    contentNP: fact('coral.np', '1'),
    contentC: fact('coral.tissue_c', 'µmol g⁻¹'),
    leastStore: fact('coral.store_least', '1'),
    fullStore: fact('coral.store_most', '1'),
    givenOff: fact('coral.organic_share', '1'),
    transferN: fact('coral.s_nh4', 'L m⁻² d⁻¹'),
    transferP: fact('coral.s_po4', 'L m⁻² d⁻¹'),
  },
  terms: {
    // Stores relative to usual tissue.
    storeN: { is: 'part(nitrogen, carbon / contentC * contentN)', unit: '1' },
    storeP: { is: 'part(phosphorus, carbon / contentC * contentN / contentNP)', unit: '1' },
    lit: { is: 'least(hours / halfDay * lightSaturation(light, saturation), 1)', unit: '1' },
    fed: { is: 'least(droop(storeN, leastStore, 1), droop(storeP, leastStore, 1))', unit: '1' },
    daily: { is: 'area * (inTheDark + (1 - inTheDark) * lit)', unit: 'm²' },
    roomN: { is: 'positive(1 - storeN / fullStore)', unit: '1' },
    thirstA: { is: 'daily * mostAmmonia * roomN', unit: 'µmol d⁻¹' },
    // Nitrate is reduced with what light gives.
    thirstN: { is: 'area * lit * mostNitrate * roomN', unit: 'µmol d⁻¹' },
    thirstP: { is: 'daily * mostPhosphate * positive(1 - storeP / fullStore)', unit: 'µmol d⁻¹' },
    supplyN: { is: 'transferN * area', unit: 'L d⁻¹' },
  },
  transfers: [
    split({
      atom: 'N',
      from: water.ammonia,
      rate: 'thirstA * monod(ammonia, halfAmmonia + thirstA / supplyN)',
      into: [
        { to: water.labile, share: 'givenOff' },
        { to: animals.corals, share: 'rest' },
      ],
    }),
    split({
      atom: 'N',
      from: water.nitrate,
      rate: 'thirstN * monod(nitrate, halfNitrate + thirstN / supplyN) * inhibited(ammonia, ammoniaFirst)',
      into: [
        { to: water.labile, share: 'givenOff' },
        { to: animals.corals, share: 'rest' },
      ],
    }),
    split({
      atom: 'P',
      from: water.phosphate,
      rate: 'thirstP * monod(phosphate, halfPhosphate + thirstP / (transferP * area))',
      into: [
        { to: water.labile, share: 'givenOff' },
        { to: animals.corals, share: 'rest' },
      ],
    }),
    split({
      atom: 'C',
      from: outside.inorganicCarbon,
      rate: 'growth * tissue * area * contentC * lit * fed / (1 - givenOff)',
      into: [
        { to: water.labile, share: 'givenOff' },
        { to: animals.corals, share: 'rest' },
      ],
    }),
  ],
})
