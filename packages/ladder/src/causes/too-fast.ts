import type { OrganicCarbonDosing } from '@holdfast/ecosystem'
import { pieceOf, type Standing } from '../standing.ts'
import { type Nutrient, readingsOf } from '../water-today.ts'
import { amount, type Found } from './found.ts'

/** Salinity that has drifted from what the system is meant to have. */
export function salinity({ question, system, facts }: Standing): Found | undefined {
  const { salinity_psu: now } = question
  const off = now === undefined ? 0 : now - system.salinity_psu
  if (now === undefined || Math.abs(off) < facts.typical('ladder.salinity')) return undefined
  const shown = `Salinity stands at ${now.toFixed(1)}, and ${system.salinity_psu} is meant`
  return {
    key: 'salinity',
    rank: 'danger',
    size: 0.5,
    cautions: ['salinity_change_too_fast'],
    ...(off > 0
      ? {
          says: `${shown}: pure water brings it back over ${Math.ceil(off)} days or more.`,
          steps: ['topoff_pure_water'],
        }
      : {
          says: `${shown}: salt water in place of the top-off brings it back over ${Math.ceil(-off / 0.5)} days or more.`,
          steps: ['water_change_small'],
        }),
  }
}

/** Days over which a dose is raised by a step or two. */
const fortnight = 14

/** Organic carbon whose dose went up faster than bacteria and the oxygen of a night bear. */
export function doseRisen(standing: Standing): Found | undefined {
  const { day, facts } = standing
  // As described, for what the log changed is counted day by day.
  const dosing = pieceOf(standing.system, 'organic carbon dosing')
  if (!dosing) return undefined
  const [before, now] = [day - fortnight, day].map((on) => doseOn(standing, dosing, on))
  if (before === 0 || now / before < facts.typical('ladder.dose_risen')) return undefined
  return {
    key: 'dose-risen',
    rank: 'short',
    size: 0.4,
    cautions: ['oxygen_at_night'],
    says: `The carbon dose went from ${before} to ${now} mL a day within a fortnight: bacteria bloom, take the oxygen of the night, and strip the water faster than corals bear.`,
    steps: ['carbon_dose_less'],
  }
}

/** mL a day as the keeper counts them; of an ethanol dose told by steps, of ethanol. */
function doseOn({ question }: Standing, dosing: OrganicCarbonDosing, day: number): number {
  const { since, mL_per_day = 0, schedule = [] } = dosing
  const described = since === undefined || since <= day ? mL_per_day : 0
  const step = schedule.filter(({ from_ }) => from_ <= day).at(-1)?.mL_ethanol_per_day
  const changed = question.events
    .flatMap((event) =>
      event.kind === 'equipment change' && event.equipment === dosing.kind && event.day <= day
        ? [event.changes.mL_per_day ?? event.changes.mL_ethanol_per_day]
        : [],
    )
    .filter((dose): dose is number => typeof dose === 'number')
    .at(-1)
  return changed ?? step ?? described
}

const fallBy: Readonly<Record<Nutrient, { readonly what: string; readonly step: string }>> = {
  phosphate: { what: 'phosphate medium', step: 'ferric_media_less' },
  nitrate: { what: 'carbon dose', step: 'carbon_dose_less' },
}

/** How much of what stands nitrate may fall by in a day. */
const shareOfNitrate = 0.1

/** Nitrate or phosphate that media or a dose bring down faster than corals bear, between the last two readings. */
export function falling(standing: Standing): Found | undefined {
  const { question, day, facts, system, medium } = standing
  const driven = {
    phosphate: medium !== undefined && medium.left >= facts.typical('ladder.spent'),
    nitrate: pieceOf(standing, 'organic carbon dosing') !== undefined,
  }
  if (!system.corals) return undefined
  for (const of of ['phosphate', 'nitrate'] as const) {
    const [before, last] = readingsOf(of, question.observations, day).slice(-2)
    if (!driven[of] || !last || last.day <= before.day) continue
    const perDay = (before.value - last.value) / (last.day - before.day)
    const most = Math.max(
      facts.fact(`ladder.fall.${of}`).high,
      of === 'nitrate' ? shareOfNitrate * before.value : 0,
    )
    if (perDay <= most) continue
    return {
      key: 'falling',
      rank: 'short',
      size: 0.5,
      cautions: [`${of}_drop_too_fast`],
      says: `${of === 'nitrate' ? 'Nitrate' : 'Phosphate'} fell from ${amount(before.value)} to ${amount(last.value)} in ${Math.round(last.day - before.day)} days, faster than corals bear: the ${fallBy[of].what} is too much at once.`,
      steps: [fallBy[of].step],
    }
  }
  return undefined
}
