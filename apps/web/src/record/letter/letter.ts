import { withOwnAnimals } from '@holdfast/facts'
import { readSystemFile, type SystemFileRead } from '@holdfast/logbook'
import { plain } from '../../figure/numbers.ts'
import { type BlankAt, withUnit } from './blank.ts'
import { blanksOf } from './blanks-of.ts'
import { inOwnUnits } from './own-units.ts'
import type { Letter, More, Sentence } from './paragraph.ts'
import { placeOf, valueAt, withValue } from './path.ts'
import type { Start } from './starts.ts'
import { gone, said } from './unsaid.ts'

/** A starting point in the keeper's units; nothing of it is said yet. */
export function begun({ document }: Pick<Start, 'document'>, timeZone: string): Letter {
  return allUnsaid(inOwnUnits({ ...document, timeZone }))
}

const allUnsaid = (letter: Letter): Letter => ({
  ...letter,
  unsaid: blanksOf(letter).map(({ path }) => placeOf(path)),
})

/** What stands in a blank, as a person reads it. */
export function textAt(letter: Letter, { path, holds }: BlankAt): string {
  const value = valueAt(letter, path)
  if (value === undefined) return ''
  return holds === 'cover' ? `${plain(100 * Number(value))} %` : String(value)
}

/** Something is said: the text goes where it belongs, as it was typed; an empty text takes it out. */
export function filled(letter: Letter, blank: BlankAt, text: string): Letter {
  const { path, holds, also } = blank
  const value = text.trim() === '' ? undefined : heldAs(withUnit(text, holds), holds)
  const beside = Object.entries(also?.(text) ?? {})
  const owner = path.slice(0, -1)
  const next = beside.reduce((whole, [key, one]) => withValue(whole, [...owner, key], one), letter)
  return { ...withValue(next, path, value), unsaid: said(unsaidOf(letter), path) }
}

/** A number where the document has one; what is no number stays as typed, for the reader to say so. */
function heldAs(text: string, holds: BlankAt['holds']): unknown {
  const number = Number(text.replace(',', '.').replace(/\s*%$/, ''))
  if (holds === 'count') return Number.isFinite(number) ? number : text
  if (holds === 'cover') return Number.isFinite(number) ? number / 100 : text
  return text
}

export const unsaidOf = ({ unsaid }: Letter): readonly string[] => unsaid ?? []

/** What stands there is right as it is. */
export const confirmed = (letter: Letter, blanks: readonly BlankAt[]): Letter => ({
  ...letter,
  unsaid: blanks.reduce((unsaid, { path }) => said(unsaid, path), unsaidOf(letter)),
})

/** With one thing more, of which nothing is said yet; what was typed stays as it was typed. */
export function withMore(letter: Letter, { path, value }: More): Letter {
  const more = withValue(letter, path, value)
  const own = inOwnUnits(more)
  const before = new Set(blanksOf(letter).map((blank) => placeOf(blank.path)))
  const fresh = blanksOf(more)
    .map((blank) => blank.path)
    .filter((at) => !before.has(placeOf(at)))
  const next = fresh.reduce((whole, at) => withValue(whole, at, valueAt(own, at)), more)
  return { ...next, unsaid: [...unsaidOf(letter), ...fresh.map(placeOf)] }
}

/** Without the thing that a sentence is about, and without the algae of a surface that goes. */
export function without(letter: Letter, { removes }: Sentence): Letter {
  if (removes === undefined) return letter
  const next = { ...withValue(letter, removes.path, undefined), unsaid: gone(unsaidOf(letter), removes.path) }
  const surfaces = new Set(next.surfaces.map(({ id }) => id))
  const lost = (next.algae ?? []).findIndex(({ surface }) => !surfaces.has(surface))
  return lost < 0
    ? next
    : without(next, { key: '', pieces: [], removes: { path: ['algae', lost], words: '' } })
}

/** The system that the letter describes, or all that keeps it from being one. */
export function read(letter: Letter): SystemFileRead {
  const found = readSystemFile(JSON.stringify(letter))
  if (!found.ok) return found
  const { issues } = withOwnAnimals(found.system.own_animals ?? [])
  return issues.length > 0 ? { ok: false, issues } : found
}
