import type { FactsOfSystem } from '@holdfast/facts'
import { convert } from '@holdfast/quantities'
import { media, water } from '../accounts/index.ts'
import { amount, concentration, exchange, fact, process, setting } from '../declare/index.ts'
import type { FerricMediaReactor, PhosphateMedium } from '../system.ts'
import { type InSystem, phosphate } from './readings.ts'

interface Reactor extends InSystem {
  readonly reactor: FerricMediaReactor
}

/** Setting that holds the dry mass of the media in the reactor, g; zero when it is empty. */
export const ferricMassSetting = 'ferric media mass'

/** Setting of the flow through the reactor, L/d, and the one that is 1 while its pump runs. */
export const ferricFlowSetting = 'ferric media flow'
export const ferricRunningSetting = 'ferric media running'

/** The concentration at which the catalogue states the load: 0.3 mg P/L. */
const catalogueReference = convert(0.3, 'mg P L⁻¹', 'µmol L⁻¹')
/**
 * A keeper's own capacity is taken to hold at 0.1 mg/L PO4, the water in which media are used
 * (estimate of ours: makers and keepers rarely say at which concentration).
 */
const keeperReference = convert(0.1, 'mg PO4 L⁻¹', 'µmol L⁻¹')

const known = ({ reactor }: Reactor) => {
  const capacity = reactor.capacity_mg_P_per_g
  if (!capacity) return undefined
  const [low, typical, high] = capacity
  const load = (value: number): number => convert(value, 'mg P g⁻¹', 'µmol g⁻¹')
  return { low: load(low), typical: load(typical), high: load(high) }
}

/** Facts of the load at the reference; the power of the concentration is taken to be that of iron. */
const loads: Readonly<Record<PhosphateMedium, string>> = {
  'iron hydroxide': 'fe.load_ref',
  'activated alumina': 'al.load_ref',
}

/** L/d through the bed; keepers set it by eye where they name none. */
const flowOf = ({ reactor }: Reactor, facts: FactsOfSystem): number =>
  24 * (reactor.flow_L_per_hour ?? facts.typical('fe.reactor_flow'))

export const ferricMedia = process<Reactor>({
  id: 'ferric-media',
  title: 'Ferric media',
  says: 'Iron hydroxide takes phosphate up the faster the poorer it is in it; loaded media in poorer water give some back. Silicate takes sites.',
  source: 'golterman-1995',
  each: (system) =>
    system.equipment
      .filter((item): item is FerricMediaReactor => item.kind === 'ferric media reactor')
      .slice(0, 1)
      .map((reactor) => ({ name: '', of: { system, reactor } })),
  reads: {
    phosphate,
    silicate: concentration(water.silicate, 'Si'),
    held: amount(media.ferric, 'P'),
    mass: setting(ferricMassSetting, 'g', ({ reactor }) => reactor.mass_g),
    flow: setting(ferricFlowSetting, 'L d⁻¹', flowOf),
    running: setting(ferricRunningSetting, '1', () => 1),
    reference: setting('ferric media reference', 'µmol L⁻¹', ({ reactor }) =>
      reactor.capacity_mg_P_per_g ? keeperReference : catalogueReference,
    ),
  },
  parameters: {
    load: fact(({ reactor }) => loads[reactor.medium ?? 'iron hydroxide'], 'µmol g⁻¹', known),
    exponent: fact('fe.freundlich.n', '1'),
    silicateHalf: fact('fe.silicate_half', 'µmol L⁻¹'),
    drive: fact('fe.klump', 'd⁻¹'),
  },
  terms: {
    wanted: {
      // Silicate takes sites (Hilbrandt et al. 2019).
      is: 'drive * (mass * load * freundlich(phosphate, reference, exponent) * inhibited(silicate, silicateHalf) - held)',
      unit: 'µmol d⁻¹',
    },
  },
  transfers: [
    exchange({
      atom: 'P',
      from: water.phosphate,
      to: media.ferric,
      rate: 'running * least(wanted, flow * phosphate)',
    }),
  ],
})
