import type { Account } from '../cells/account.ts'
import { placeName } from '../cells/account.ts'
import type { FoundNote } from '../cells/gathered.ts'
import type { Resolved } from '../dates/resolve-dates.ts'
import type { Questions } from '../questions.ts'
import type { NoteEvent, SheetNote } from '../sheet.ts'
import { readNote } from './read-note.ts'

const gallons = { 'US (3.785 L)': 'US gal', 'imperial (4.546 L)': 'imp gal' } as const
type Gallon = keyof typeof gallons

/** A note where it stands, with what it says. */
export interface Noted extends FoundNote {
  readonly events: readonly NoteEvent[]
}

/** Reads every note; asks once which gallons the keeper means. */
export function readNotes(
  notes: readonly FoundNote[],
  questions: Questions,
  account: Account,
): readonly Noted[] {
  const asked = { key: 'notes', where: 'the notes' }
  const known = questions.answer('gallon', asked.key)
  const gallon = known === undefined ? undefined : gallons[known as Gallon]
  return notes.map((note) => {
    const says = readNote(note.text, gallon)
    if (says.gallon)
      questions.choose(asked, 'gallon', 'Gallons: US or imperial?', Object.keys(gallons), [placeName(note)])
    if (says.odd !== undefined) account.point(note, note.text, says.odd, 'kept as a note')
    return { ...note, events: says.events }
  })
}

/** The notes that have a day. */
export function takeNotes(
  notes: readonly Noted[],
  whenOf: (note: Noted) => Resolved,
  account: Account,
): readonly SheetNote[] {
  return notes.flatMap((note): SheetNote[] => {
    const when = whenOf(note)
    if (when === 'waits') {
      account.wait(note)
      return []
    }
    if (when === 'wrong') {
      account.list(note, note.text, `"${note.moment.written}" in ${note.moment.cell} is no date`)
      return []
    }
    account.read(note)
    const tank = note.tank === undefined ? {} : { tank: note.tank }
    return [{ ...when, ...tank, text: note.text, cell: placeName(note), events: note.events }]
  })
}
