import { ln } from '@holdfast/elementary'
import { fact } from '@holdfast/facts'
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

/** Below this animals are in danger by the hour, mg/L O2. */
export const dangerous_mg_L = 3

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
  const typical = (id: string): number => fact(id).typical
  return (
    typical('oxygen.at_night') *
    (typical('oxygen.per_carbon') * carbon + typical('oxygen.per_nitrogen') * nitrogen)
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
  const velocity = fact(pumps ? 'oxygen.transfer.flow' : 'oxygen.transfer.still').typical
  const depth = fact('oxygen.depth').typical
  const skimmers = model.system.equipment.filter(({ kind }) => kind === 'skimmer').length
  // A surface of volume over depth: m/d over m is a share of the water a day.
  const share = velocity / depth + (foam && skimmers > 0 ? fact('oxygen.transfer.foam').typical : 0)
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
export function hoursWithoutPumps(at: At, limit_mg_L = dangerous_mg_L): number {
  const start = oxygenAtDawn_mg_L(at)
  if (start <= limit_mg_L) return 0
  const renewal = aeration(at.model, { pumps: false, foam: false }) / at.model.volume_L
  const level = oxygenSaturation_mg_L(at.model) - mgOf(darkRespiration(at) / at.model.volume_L) / renewal
  if (level >= limit_mg_L) return Number.POSITIVE_INFINITY
  return (24 / renewal) * ln((start - level) / (limit_mg_L - level))
}

const mgOf = (umol: number): number => convert(umol, 'µmol O2', 'mg O2')

/** Share of weighed members whose oxygen at dawn is under a limit, mg/L. */
export function chanceOfLowOxygen(
  members: readonly At[],
  weights: readonly number[],
  limit_mg_L = 5,
): number {
  const all = weights.reduce((sum, weight) => sum + weight, 0)
  const low = members.reduce(
    (sum, member, m) => sum + (oxygenAtDawn_mg_L(member) < limit_mg_L ? (weights[m] ?? 0) : 0),
    0,
  )
  return all > 0 ? low / all : 0
}

/** How urgent low oxygen is: a word by the chance of under 5 mg/L and the dawn of the middle member. */
export function oxygenWarning(chance: number, dawn_mg_L: number): 'none' | 'warn' | 'urgent' {
  if (dawn_mg_L < 4) return 'urgent'
  return chance > 0.05 ? 'warn' : 'none'
}
