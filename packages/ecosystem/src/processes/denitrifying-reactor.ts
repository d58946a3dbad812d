import type { FactsOfSystem } from '@holdfast/facts'
import { outside, water } from '../accounts/index.ts'
import { fact, move, process, setting } from '../declare/index.ts'
import type { DenitrifyingReactor, System } from '../system.ts'
import { type InSystem, nitrate, temperature } from './readings.ts'

interface Reactor extends InSystem {
  readonly reactor: DenitrifyingReactor
  readonly index: number
}

export const reactorsOf = (system: System) =>
  system.equipment
    .filter((item): item is DenitrifyingReactor => item.kind === 'denitrifying reactor')
    .map((reactor, index) => ({
      name: `reactor ${index + 1}, ${reactor.fed}`,
      of: { system, reactor, index },
    }))

/** Setting of a reactor: its media in L, its flow in L/d. */
export const reactorSetting =
  (what: 'media' | 'flow') =>
  (index: number): string =>
    `reactor ${index} ${what}`

/** L/d through the reactor; keepers set it low. */
const flowOf = ({ media_L, flow_L_per_hour }: DenitrifyingReactor, facts: FactsOfSystem): number =>
  24 * (flow_L_per_hour ?? media_L * facts.typical('den.reactor.flow'))

/** What runs through bounds what it can take; carbon fed for it is given as it is used, and burnt. */
export const denitrifyingReactor = process<Reactor>({
  id: 'denitrifying-reactor',
  title: 'Denitrifying reactor',
  says: 'Without oxygen bacteria in a reactor turn nitrate into nitrogen gas, on carbon that is fed to them or on sulphur.',
  source: 'van-rijn-2006',
  each: reactorsOf,
  reads: {
    nitrate,
    temperature,
    media: setting(
      ({ index }) => reactorSetting('media')(index),
      'L',
      ({ reactor }) => reactor.media_L,
    ),
    flow: setting(
      ({ index }) => reactorSetting('flow')(index),
      'L d⁻¹',
      ({ reactor }, facts) => flowOf(reactor, facts),
    ),
    onCarbon: setting(
      ({ index }) => `reactor ${index} on carbon`,
      '1',
      ({ reactor }) => (reactor.fed === 'organic' ? 1 : 0),
    ),
  },
  parameters: {
    capacity: fact(
      ({ reactor }) => (reactor.fed === 'organic' ? 'den.reactor' : 'den.sulphur'),
      'µmol L⁻¹ d⁻¹',
    ),
    half: fact('den.reactor.ks', 'µmol L⁻¹'),
    warming: fact('den.q10', '1'),
    carbonForNitrogen: fact('den.c_per_n', '1'),
  },
  terms: {
    most: { is: 'media * capacity * q10(warming, temperature)', unit: 'µmol d⁻¹' },
    // Flow and bacteria as resistances in a row: never more than what runs through.
    rate: { is: 'most * monod(nitrate, half + most / flow)', unit: 'µmol d⁻¹' },
  },
  transfers: [
    move({ atom: 'N', from: water.nitrate, to: outside.air, rate: 'rate' }),
    move({
      atom: 'C',
      from: outside.dose,
      to: outside.inorganicCarbon,
      rate: 'onCarbon * rate * carbonForNitrogen',
    }),
  ],
})

/**
 * What a sulphur reactor asks for, for so much nitrogen: alkalinity used (µmol) and sulphate made (µmol).
 * 55 S + 50 NO3 + ... = 25 N2 + 55 SO4 + 64 H (Batchelor & Lawrence 1978, recalled).
 */
export const sulphurReactorUse = (nitrogen_umol: number) => ({
  alkalinity_umol: (64 / 50) * nitrogen_umol,
  sulphate_umol: (55 / 50) * nitrogen_umol,
})
