/**
 * What was done to a system, day by day, as its equipment and its log say: rations, changes, top-off. One
 * reading of the case for the closed forms and for the model alike.
 */
import { CannotAnswer, waterVolume } from './answers/answer.ts'
import { dayNumber, isoDate } from './calendar.ts'
import type { CaseEvent, CaseFile, CaseWater } from './case-file.ts'

/** mg/L of the ions, and practical salinity. */
export interface Poured {
  readonly NO3_mg_L: number
  readonly PO4_mg_L: number
  readonly salinity_psu: number
}

export interface WaterChange {
  readonly date: string
  readonly volume_L: number
  readonly water: Poured
}

/** Ration of all feeds together, g a day, on each of the days from `from` to the day before `to`. */
export function rations(file: CaseFile, from: string, to: string): readonly number[] {
  const usual = usualRation(file)
  const changes = eventsOf(file, 'feed change')
  return datesBetween(from, to).map((date) => {
    const last = changes.filter((event) => event.date <= date).at(-1)
    return last === undefined ? usual : Number(last.g_per_day)
  })
}

export function usualRation({ system }: CaseFile): number {
  return system.feeds.reduce((sum, feed) => sum + feed.g_per_day, 0)
}

/** g of the atom in a gram of the usual mix of feeds; 0 where nothing is fed. */
export function atomInRation({ system }: CaseFile, atom: 'N' | 'P'): number {
  const grams = system.feeds.reduce((sum, feed) => sum + feed.g_per_day, 0)
  const held = system.feeds.reduce(
    (sum, feed) => sum + feed.g_per_day * (feed[`${atom}_mass_fraction`] ?? 0),
    0,
  )
  return grams === 0 ? 0 : held / grams
}

/**
 * Changes from `from` to the day before `to`. Where the log tells of changes it is the record of what
 * happened, and the routine counts only after the last of them; without any the routine was kept.
 */
export function waterChanges(file: CaseFile, from: string, to: string): readonly WaterChange[] {
  const events = eventsOf(file, 'water change')
  const told = events.flatMap((event, at) => {
    const water = poured(file, event.water ?? 'source water + salt')
    const until = events.slice(at + 1).find((next) => next.every_days !== undefined)?.date ?? to
    const dates =
      event.every_days === undefined ? [event.date] : every(event.date, Number(event.every_days), until)
    return dates.map((date) => ({ date, volume_L: Number(event.volume_L), water }))
  })
  return [...told, ...(hasRecord(file) ? [] : routineChanges(file, file.start, to))]
    .filter(({ date }) => date >= from && date < to)
    .sort((a, b) => (a.date < b.date ? -1 : a.date > b.date ? 1 : 0))
}

/** The changes that the routine asks for from `first` to the day before `to`, whatever the log tells. */
export function routineChanges(file: CaseFile, first: string, to: string): readonly WaterChange[] {
  const item = routineOf(file)
  if (item === undefined) return []
  const skipped = Array.isArray(item.skipped) ? item.skipped : []
  const water = poured(file, item.water ?? 'source water + salt')
  const starts = [first, ...routineShifts(file).map(({ date }) => date)]
  return starts.flatMap((start, at) => {
    const routine = routineAt(file, start)
    if (routine === undefined) return []
    return every(start, routine.every_days, starts[at + 1] ?? to)
      .filter((date) => date < to && !skipped.includes(date))
      .map((date) => ({ date, volume_L: routine.volume_L, water }))
  })
}

/** The routine as it stands on a date: changes of it in the log hold from their day. */
export function routineAt(
  file: CaseFile,
  date: string,
): { readonly volume_L: number; readonly every_days: number } | undefined {
  const item = routineOf(file)
  if (item === undefined) return undefined
  const shifts = routineShifts(file).filter((event) => event.date <= date)
  const now: Readonly<Record<string, unknown>> = Object.assign({}, item, ...shifts)
  return { volume_L: Number(now.volume_L), every_days: Number(now.every_days) }
}

function routineOf({ system }: CaseFile) {
  return system.equipment.find(({ kind }) => kind === 'water change')
}

function routineShifts(file: CaseFile): readonly CaseEvent[] {
  return eventsOf(file, 'equipment change').filter(({ equipment }) => equipment === 'water change')
}

/** The log is the record of changes when it tells of at least half as many as the routine asks for. */
function hasRecord(file: CaseFile): boolean {
  const told = eventsOf(file, 'water change')
  if (told.some(({ every_days }) => every_days !== undefined)) return true
  return told.length > 0 && 2 * told.length >= routineChanges(file, file.start, file.asof).length
}

/** Pure water that leaves as vapour on a day. */
export function evaporation_L({ system }: CaseFile): number {
  return system.evaporation_L_per_day
}

/** How the vapour is replaced: by a float or daily, so that the level stands, or only by what the log tells. */
export function topOff(file: CaseFile): {
  readonly byLog: boolean
  readonly isEmpty: (date: string) => boolean
  readonly water: (date: string) => Poured
} {
  const poursByHand = eventsOf(file, 'top-off').length > 0
  const empty = eventsOf(file, 'top-off empty')
  const changed = eventsOf(file, 'top-off changed')
  const automatic = file.system.equipment.some(({ kind }) => kind === 'automatic top-off')
  return {
    byLog: poursByHand && !automatic && empty.length === 0 && changed.length === 0,
    isEmpty: (date) =>
      empty.some((event) => {
        const first = dayNumber(event.date)
        return dayNumber(date) >= first && dayNumber(date) < first + Number(event.days)
      }),
    water: (date) => {
      const last = changed
        .filter((event) => event.date <= date && (event.until === undefined || date < String(event.until)))
        .at(-1)
      return poured(file, last?.water ?? 'source water')
    },
  }
}

export function eventsOf(file: CaseFile, kind: string): readonly CaseEvent[] {
  return file.log.events
    .filter((event) => event.kind === kind)
    .sort((a, b) => (a.date < b.date ? -1 : a.date > b.date ? 1 : 0))
}

const pure: Poured = { NO3_mg_L: 0, PO4_mg_L: 0, salinity_psu: 0 }

/** The water that a case names. @throws CannotAnswer for a name that may mean several waters */
export function poured({ system }: CaseFile, water: unknown): Poured {
  const source = ions(system.source_water)
  const salt = ions(system.salt_mix)
  const salted = {
    NO3_mg_L: source.NO3_mg_L + salt.NO3_mg_L,
    PO4_mg_L: source.PO4_mg_L + salt.PO4_mg_L,
    salinity_psu: salt.salinity_psu || system.salinity_psu,
  }
  if (typeof water === 'object' && water !== null) return { ...pure, ...ions(water as CaseWater) }
  const name = String(water).trim().toLowerCase()
  if (/salt|sea ?water/.test(name)) {
    return /ro\/?di|pure|distilled/.test(name) ? { ...salted, ...withoutSource(salt) } : salted
  }
  if (/^(ro|ro\/?di|di|pure|pure water|distilled|distilled water|deionised( water)?)( water)?$/.test(name))
    return pure
  if (name === 'source' || name === 'source water') return { ...source, salinity_psu: 0 }
  if (name === String(system.source_water.kind ?? '').toLowerCase()) return { ...source, salinity_psu: 0 }
  if (/^tap( water)?$/.test(name) && system.source_water.kind === 'tap') return { ...source, salinity_psu: 0 }
  throw new CannotAnswer(`the composition of the water named "${String(water)}"`)
}

function withoutSource(salt: Poured): Pick<Poured, 'NO3_mg_L' | 'PO4_mg_L'> {
  return { NO3_mg_L: salt.NO3_mg_L, PO4_mg_L: salt.PO4_mg_L }
}

export function ions(water: CaseWater): Poured {
  return {
    NO3_mg_L: water.NO3_mg_L ?? 0,
    PO4_mg_L: water.PO4_mg_L ?? 0,
    salinity_psu: water.salinity_psu ?? 0,
  }
}

/** Share of the water that one change of the routine replaces. */
export function routineChangeFraction(file: CaseFile): number | undefined {
  const routine = routineAt(file, file.asof)
  return routine === undefined ? undefined : routine.volume_L / waterVolume(file)
}

/** The day on which the media in use were placed: by the log, else by the equipment and its calendar. */
export function lastPlaced(file: CaseFile): string | undefined {
  const reactor = file.system.equipment.find(({ kind }) => kind === 'ferric media reactor')
  const told = eventsOf(file, 'media placed')
    .filter(({ date }) => date <= file.asof)
    .at(-1)?.date
  if (told !== undefined || reactor === undefined) return told
  const first = dayNumber(typeof reactor.placed === 'string' ? reactor.placed : file.start)
  const every = reactor.replaced_every_days
  if (typeof every !== 'number') return isoDate(first)
  return isoDate(first + every * Math.floor(Math.max(0, dayNumber(file.asof) - first) / every))
}

/** ISO dates from `from` to the day before `to`. */
export function datesBetween(from: string, to: string): readonly string[] {
  return every(from, 1, to)
}

function every(first: string, days: number, to: string): readonly string[] {
  const end = dayNumber(to)
  const dates: string[] = []
  for (let day = dayNumber(first); day < end; day += days) dates.push(isoDate(day))
  return dates
}

/** Whether an animal that was lost stayed where it died: it did unless the note says that it was got out. */
export function stayed({ note }: CaseEvent): boolean {
  const words = String(note ?? '').toLowerCase()
  const gotOut = /\b(removed|taken out|netted out|jumped out|sold|given away|rehomed|moved)\b/.test(words)
  return !gotOut || /\b(not|never|nobody|un)\b[\w\s]*(removed|taken out|netted|found)/.test(words)
}
