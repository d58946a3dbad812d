import { ln } from '@holdfast/elementary'
import { convert } from '@holdfast/quantities'
import { oxygenSaturationByVolume } from '@holdfast/seawater'
import type { Model } from '../assemble/model.ts'
import { equationsOf } from '../simulate/equations-of.ts'

/** What moves oxygen besides life: pumps that break the surface, and foam. */
export interface Moving {
  readonly pumps: boolean
  readonly foam: boolean
}

/** A state of the model, with what it is reckoned by. */
export interface At {
  readonly model: Model
  readonly states: Float64Array
  readonly parameters: Float64Array
  readonly settings: Float64Array
}

/** What oxygen is reckoned and judged by, beside the processes. */
export const factsOfOxygen = {
  atNight: 'oxygen.at_night',
  perCarbon: 'oxygen.per_carbon',
  perNitrogen: 'oxygen.per_nitrogen',
  transferWithPumps: 'oxygen.transfer.flow',
  transferStill: 'oxygen.transfer.still',
  transferOfFoam: 'oxygen.transfer.foam',
  depth: 'oxygen.depth',
  danger: 'oxygen.danger',
  low: 'oxygen.low',
  urgent: 'oxygen.urgent',
  chance: 'oxygen.chance',
} as const

const usual = ({ facts }: Model, what: keyof typeof factsOfOxygen): number =>
  facts.typical(factsOfOxygen[what])

/**
 * Oxygen used in the dark, µmol/d: all organic carbon that is burnt and all ammonia that is oxidised, by the
 * same flows as the ledger. Photosynthesis gives nothing at night and is left out.
 */
export function darkRespiration({ model, states, parameters, settings }: At): number {
  const rates = new Float64Array(model.fluxes.length)
  equationsOf(model, parameters, darkened(model, settings)).rates(states, rates)
  let carbon = 0
  let nitrogen = 0
  model.fluxes.forEach(({ process, atom, from, to }, k) => {
    const rate = Math.max(0, rates[k] ?? 0)
    const target = model.states[to]
    const source = model.states[from]
    if (target?.kind !== 'atoms' || source?.kind !== 'atoms') return
    // What nitrate burns needs no oxygen.
    if (atom === 'C' && target.account.id === 'outside.inorganic-carbon' && !anoxic.has(process.id))
      carbon += rate
    if (process.id === 'ammonia-oxidation' && target.account.id === 'water.nitrite') nitrogen += rate
  })
  return (
    usual(model, 'atNight') * (usual(model, 'perCarbon') * carbon + usual(model, 'perNitrogen') * nitrogen)
  )
}

/** The settings with every lamp off. */
const darkened = (model: Model, settings: Float64Array): Float64Array =>
  Float64Array.from(settings, (value, k) => {
    const id = model.settings.ids[k] ?? ''
    return id.startsWith('light ') && !id.startsWith('light hours') ? 0 : value
  })

const anoxic: ReadonlySet<string> = new Set(['denitrification', 'denitrifying-reactor'])

/** Oxygen that the surface and foam exchange, as water aerated fully in a day, L/d. */
function aeration(model: Model, { pumps, foam }: Moving): number {
  const velocity = usual(model, pumps ? 'transferWithPumps' : 'transferStill')
  const depth = usual(model, 'depth')
  const skimmers = model.system.equipment.filter(({ kind }) => kind === 'skimmer').length
  // A surface of volume over depth: m/d over m is a share of the water a day.
  const share = velocity / depth + (foam && skimmers > 0 ? usual(model, 'transferOfFoam') : 0)
  return share * model.volume_L
}

/** mg/L of oxygen in balance with air. */
export const oxygenSaturation_mg_L = ({ system }: Model): number =>
  oxygenSaturationByVolume(system.salinity_psu, system.temperature_C)

/** mg/L of oxygen at the end of the night, when use and exchange are in balance; 0 where use is the greater. */
export function oxygenAtDawn_mg_L(at: At, moving: Moving = { pumps: true, foam: true }): number {
  const lack = mgOf(darkRespiration(at) / aeration(at.model, moving))
  return Math.max(0, oxygenSaturation_mg_L(at.model) - lack)
}

/**
 * Hours from a stop of all pumps in the dark until oxygen has fallen to `limit`; Infinity if it never does. The
 * water is taken as mixed: in still water animals at the bottom have less time. Use falls in proportion to
 * oxygen under a half of saturation in life; here it goes on, which errs to the safe side.
 */
export function hoursWithoutPumps(at: At, limit_mg_L = usual(at.model, 'danger')): number {
  const start = oxygenAtDawn_mg_L(at)
  if (start <= limit_mg_L) return 0
  const renewal = aeration(at.model, { pumps: false, foam: false }) / at.model.volume_L
  const level = oxygenSaturation_mg_L(at.model) - mgOf(darkRespiration(at) / at.model.volume_L) / renewal
  if (level >= limit_mg_L) return Number.POSITIVE_INFINITY
  return (24 / renewal) * ln((start - level) / (limit_mg_L - level))
}

const mgOf = (umol: number): number => convert(umol, 'µmol O2', 'mg O2')

/** Share of weighed members whose oxygen at dawn is low. */
export function chanceOfLowOxygen(members: readonly At[], weights: readonly number[]): number {
  const all = weights.reduce((sum, weight) => sum + weight, 0)
  const low = members.reduce(
    (sum, member, m) =>
      sum + (oxygenAtDawn_mg_L(member) < usual(member.model, 'low') ? (weights[m] ?? 0) : 0),
    0,
  )
  return all > 0 ? low / all : 0
}

/** How urgent low oxygen is: a word by the chance of it and the dawn of the middle member. */
export function oxygenWarning(model: Model, chance: number, dawn_mg_L: number): 'none' | 'warn' | 'urgent' {
  if (dawn_mg_L < usual(model, 'urgent')) return 'urgent'
  return chance > usual(model, 'chance') ? 'warn' : 'none'
}
