import type { NoteEvent, SheetNote } from '@holdfast/logbook'
import { withMark } from '../../ways/decimal.ts'

/** A note of a sheet, and what else is made of it. */
export interface Noted {
  readonly cell: string
  readonly date: string
  readonly text: string
  readonly tank?: string
  /** What is stored beside the note. */
  readonly stored: readonly string[]
  /** What it seems to say and is not stored. */
  readonly notStored: readonly string[]
}

export function notedIn({ cell, date, text, tank, events }: SheetNote): Noted {
  const said = events.map(inWords)
  return {
    cell,
    date,
    text,
    ...(tank !== undefined && { tank }),
    stored: said.flatMap(({ words, isStored }) => (isStored ? [words] : [])),
    notStored: said.flatMap(({ words, isStored }) => (isStored ? [] : [words])),
  }
}

const figure = (value: number): string => withMark(String(Number(value.toPrecision(4))))

function inWords(event: NoteEvent): { readonly words: string; readonly isStored: boolean } {
  switch (event.kind) {
    case 'water-change':
      return { words: `Water change of ${figure(event.volume_L)} L`, isStored: true }
    case 'media':
      return { words: `Media ${event.action}, ${figure(event.mass_g)} g`, isStored: true }
    case 'animals':
      return {
        words: `${event.count} × ${event.named}: log them with their species`,
        isStored: false,
      }
    case 'kit-change':
      return { words: 'another kit from here on', isStored: false }
    case 'unit-change':
      return { words: 'another unit from here on', isStored: false }
    case 'equipment-off':
      return { words: `equipment off for ${figure(event.hours)} h: log it if it matters`, isStored: false }
  }
}
