/**
 * What log and equipment settle by themselves, whatever a model says: a harvest that was weighed, an export
 * that did not take place, an input that was not given.
 */
import { daysBetween } from '../calendar.ts'
import type { CaseEquipment, CaseFile } from '../case-file.ts'
import { eventsOf } from '../husbandry.ts'
import { inputSums } from '../input-sums.ts'
import { isNoModel } from '../model-answers.ts'
import { type Answered, type Family, type Question, spanOf, textIn } from './answer.ts'

/** @returns an answer, or undefined where it takes a model */
export function certainAnswer(question: Question): Answered | undefined {
  const { check, file } = question
  const [, atom] = /_(N|P)(_|$)/.exec(check.quantity) ?? []
  if (atom !== 'N' && atom !== 'P') return undefined
  const fractionOf = /^fraction_of_[NP]_input_from_(feed|source_water)$/.exec(check.quantity)?.[1]
  if (fractionOf === 'feed' || fractionOf === 'source_water') {
    const { from, to } = spanOf(file, check)
    return inputSums(file, atom, from, to)[fractionOf] === 0 ? { value: 0 } : undefined
  }
  if (!/^export_(share_[NP]|[NP]_mg_d)$/.test(check.quantity)) return undefined
  const perDay = loggedExport(question, atom)
  if (perDay === undefined) return undefined
  // A share of 0 is 0 of any whole; another share needs the whole.
  return check.quantity.endsWith('_mg_d') || perDay === 0 ? { value: perDay } : undefined
}

/** mg a day of an export that only people carry out. */
function loggedExport({ check, file }: Question, atom: 'N' | 'P'): number | undefined {
  const { from, to } = spanOf(file, check)
  switch (textIn(check, 'process')) {
    case 'refugium_harvest':
    case 'refugium':
      return harvested(file, atom, from, to)
    // What grazers eat stays in the system; only animals that are taken out leave it.
    case 'crew':
    case 'animals_removed':
      return eventsOf(file, 'animals lost').some(({ date }) => date >= from && date <= to) ? undefined : 0
    default:
      return undefined
  }
}

function harvested(file: CaseFile, atom: 'N' | 'P', from: string, to: string): number | undefined {
  const bed = file.system.equipment.find(({ kind }) => kind === 'refugium')
  if (bed === undefined) return 0
  const perWet = Number(bed.dry_fraction) * Number(bed[`${atom}_of_dry`]) * 1000
  const told = eventsOf(file, 'harvest')
  const days = daysBetween(from, to)
  if (told.length > 0) {
    const wet_g = told
      .filter(({ date }) => date >= from && date <= to)
      .reduce((sum, event) => sum + Number(event.wet_g), 0)
    return wet_g === 0 ? 0 : known((wet_g * perWet) / days)
  }
  return isDark(bed, to) ? 0 : known((Number(bed.harvest_g_wet) / Number(bed.harvest_every_days)) * perWet)
}

function known(value: number): number | undefined {
  return Number.isFinite(value) ? value : undefined
}

function isDark(bed: CaseEquipment, date: string): boolean {
  return bed.light_h_per_day === 0 || (typeof bed.light_off_since === 'string' && bed.light_off_since <= date)
}

export const idleAnswers: Family = {
  binding_export_idle: {
    unit: 'words',
    answer: (question) => {
      const { file } = question
      const idle = file.system.equipment.flatMap((item) => idleName(file, item))
      const media = file.system.equipment.find(({ kind }) => kind === 'ferric media reactor')
      if (media === undefined) return { value: idle, anyOrder: true }
      if (typeof media.removed === 'string' && media.removed <= file.asof)
        return { value: [...idle, 'ferric_media'], anyOrder: true }
      const day = question.model.mediaExhaustedAfter(file, 0)
      if (isNoModel(day)) return day
      return { value: Number.isFinite(day) ? [...idle, 'ferric_media'] : idle, anyOrder: true }
    },
  },
}

/** The export that a piece of equipment stands for, if it carries nothing on the day on which one looks. */
function idleName(file: CaseFile, item: CaseEquipment): readonly string[] {
  const { asof } = file
  switch (item.kind) {
    case 'refugium':
      return isDark(item, asof) || harvested(file, 'N', file.start, asof) === 0 ? ['refugium'] : []
    case 'turf scrubber':
      return item.light_h_per_day === 0 || item.light_umol_m2_s === 0 ? ['scrubber_harvest'] : []
    case 'skimmer': {
      const off = (item.off ?? []) as readonly (readonly [string, string])[]
      return off.some(([from, to]) => from <= asof && asof <= to) ? ['foam'] : []
    }
    default:
      return []
  }
}
