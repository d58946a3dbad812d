import { v5 } from 'uuid'

import type { BodyOf, Entry, EntryOf, Envelope, Stored } from '../entries/entry.ts'
import { kindNamed } from '../entries/index.ts'
import { type ReadQuantity, readQuantities } from '../entries/reading.ts'
import { localTime } from '../model-day.ts'
import { ImportedBefore } from './imported-before.ts'
import type { Sheet, SheetNote, SheetReading } from './sheet.ts'

/** Namespace of imported values; made once for this project and never changed. */
const namespace = '6f1f5a64-2c0e-4c55-9a3b-6b0e6a5d7c11'

/** Whose sheet it is, who imports it and when. */
export interface ImportInto {
  readonly workspace: string
  readonly system: string
  /** IANA zone of the system. */
  readonly timeZone: string
  readonly by: string
  readonly device: string
  readonly madeAt: string
  /** One id for the whole import, so that one undo takes all of it back. */
  readonly batch: string
  /** Cells that the keeper left out in the preview, such as B7. */
  readonly leftOut?: readonly string[]
  /** Where the sheet tells tanks apart: the system of each, null where it is left out. */
  readonly tanks?: Readonly<Record<string, string | null>>
}

/** What an import would do: the preview shows it, the import stores `entries`. */
export interface SheetEntries {
  /** New entries, corrections among them. */
  readonly entries: readonly Entry[]
  /** Cells whose value is in the log already. */
  readonly already: readonly string[]
  /** Mended cells: what the log holds from an earlier import of that day, and what the sheet says now. */
  readonly mended: readonly Mended[]
  /** Cells that the keeper took back one by one after an earlier import; they stay out. */
  readonly takenBack: readonly string[]
  /** Tanks of the sheet without a system: nothing of theirs is taken. */
  readonly unplaced: readonly string[]
}

export interface Mended {
  readonly cell: string
  readonly date: string
  readonly quantity: ReadQuantity
  readonly was: string
  readonly now: string
}

/** Something of the sheet on its way to become an entry. */
interface Draft {
  readonly cell: string
  readonly tank: string | undefined
  readonly date: string
  readonly time: string | undefined
  /** What makes it the same in two files: quantity, value and unit; the place in the file does not count. */
  readonly identity: readonly (string | number | null)[]
  readonly content: Content
}

type Imported = 'reading' | 'note' | 'water-change' | 'media'
type Content = { [K in Imported]: { readonly kind: K; readonly body: BodyOf<K> } }[Imported]

/**
 * The entries that a sheet adds to a log. The id of each is a UUIDv5 of system, quantity, date, value,
 * unit and its count among equals on that day: importing twice, moving rows or renaming the file doubles
 * nothing, and two equal readings are kept.
 *
 * @param stored  entries of the system that the log holds, in the order of receipt
 */
export function entriesFromSheet(sheet: Sheet, into: ImportInto, stored: readonly Stored[]): SheetEntries {
  const before = new ImportedBefore(stored)
  const leftOut = new Set(into.leftOut)
  const drafts = [...sheet.readings.map(ofReading), ...sheet.notes.flatMap(ofNote)].flatMap((draft) => {
    const system = draft.tank === undefined ? into.system : into.tanks?.[draft.tank]
    return system === undefined || system === null || leftOut.has(draft.cell) ? [] : [{ draft, system }]
  })
  const unplaced = sheet.tanks.filter((tank) => into.tanks?.[tank] === undefined)
  const counts = new Map<string, number>()
  const found = drafts.map(({ draft, system }) => {
    const same = [system, draft.content.kind, draft.date, ...draft.identity]
    const key = JSON.stringify(same)
    const count = (counts.get(key) ?? 0) + 1
    counts.set(key, count)
    const { id, state, standsAs } = before.find((again) =>
      idOf([...same, count, ...(again > 0 ? ['again', again] : [])]),
    )
    return { draft, system, id, state, standsAs }
  })
  before.claim(found.filter(({ state }) => state === 'already').map(({ standsAs }) => standsAs))
  const entries: Entry[] = []
  const mended: Mended[] = []
  for (const { draft, system, state, id } of found) {
    if (state !== 'new') continue
    const was =
      draft.content.kind === 'reading'
        ? before.mendedBy(system, draft.date, draft.content.body.quantity)
        : undefined
    if (was !== undefined) mended.push(wasNow(draft, was))
    const entry = { ...envelope(into, system, draft, id), ...draft.content }
    entries.push(was === undefined ? entry : { ...entry, replaces: was.id })
  }
  const cellsThat = (state: string): string[] =>
    found.filter((one) => one.state === state).map(({ draft }) => draft.cell)
  return { entries, already: cellsThat('already'), mended, takenBack: cellsThat('taken back'), unplaced }
}

/** Of a list of plain values, whose JSON is canonical as it is. */
const idOf = (parts: readonly (string | number | null)[]): string => v5(JSON.stringify(parts), namespace)

function envelope(into: ImportInto, system: string, { date, time, content }: Draft, id: string): Envelope {
  const { workspace, by, device, madeAt, batch, timeZone } = into
  const at = time === undefined ? date : localTime(date, time, timeZone)
  return {
    id,
    workspace,
    system,
    v: kindNamed(content.kind).v,
    at,
    precision: time === undefined ? 'day' : 'minute',
    madeAt,
    by,
    device,
    batch,
  }
}

function ofReading(reading: SheetReading): Draft {
  const { cell, date, time, tank, quantity, half, interval } = reading
  // A zero without a limit says only that nothing was detected; 0 stored as a limit would bias the fit.
  const value = reading.zeroAsWritten ? null : reading.value
  const { belowDetection, aboveRange, approximate, text, unit, form, kit } = reading
  const words = [half && (half === 'am' ? 'morning' : 'evening'), reading.remark].filter(Boolean).join('; ')
  const body = {
    quantity,
    text,
    ...(unit !== undefined && { unit }),
    ...(form !== undefined && { form }),
    ...(kit !== undefined && { kit }),
    ...(words !== '' && { remark: words }),
    value,
    belowDetection,
    ...(aboveRange && { aboveRange }),
    ...(approximate && { approximate }),
    ...(interval && { interval: [...interval] as [number, number] }),
  }
  const sign = belowDetection ? '<' : aboveRange ? '>' : '='
  const identity = [quantity, sign, value === null ? null : value.toPrecision(6), readQuantities[quantity]]
  return { cell, date, time, tank, identity, content: { kind: 'reading', body } }
}

function ofNote({ cell, date, time, tank, text, events }: SheetNote): Draft[] {
  const when = { cell, date, time, tank }
  const drafts: Draft[] = [{ ...when, identity: [text], content: { kind: 'note', body: { text } } }]
  for (const event of events) {
    if (event.kind === 'water-change') {
      const body = { volume_L: event.volume_L, text }
      drafts.push({
        ...when,
        identity: [event.volume_L.toPrecision(6), 'L'],
        content: { kind: 'water-change', body },
      })
    } else if (event.kind === 'media') {
      const { action, mass_g } = event
      const body = { action, medium: 'phosphate media', mass_g, text } as const
      drafts.push({ ...when, identity: [mass_g.toPrecision(6), 'g'], content: { kind: 'media', body } })
    }
    // Animals wait for the keeper: the log needs their species, and a note seldom says it.
  }
  return drafts
}

function wasNow({ cell, date, content }: Draft, was: EntryOf<'reading'>): Mended {
  if (content.kind !== 'reading') throw new Error('only readings are mended')
  const { quantity } = content.body
  return { cell, date, quantity, was: inWords(was.body), now: inWords(content.body) }
}

function inWords({ text, unit, form }: BodyOf<'reading'>): string {
  return [text, unit, form].filter((word) => word !== undefined).join(' ')
}
