import { convert } from '@holdfast/quantities'

import { plain } from './read-number.ts'
import type { NoteEvent } from './sheet.ts'

/** What a note says that can be logged; `gallon` true where it hangs on which gallon is meant. */
export interface NoteSays {
  readonly events: readonly NoteEvent[]
  readonly gallon: boolean
  /** What looks like an event and could not be taken. */
  readonly odd?: string
}

const waterChange =
  /\b(water change|changed|wc|ww|wasserwechsel|teilwasserwechsel|changement d'eau|cambio de agua|waterverversing)\b/
const amount = /(\d+(?:[.,]\d+)?)\s*(l|liter|litre|litres|liters|litros|gal|gallon|gallons|%)(?![a-z])/
const ferric = /\b(adsorber|phosphate media|ferric(?: media| oxide| hydroxide)?|gfo|absorber)\b/
const grams = /(\d+(?:[.,]\d+)?)\s*g(?![a-z])/
const swapped = /\b(changed|replaced|swapped|gewechselt|erneuert|getauscht|remplace)\b/
const animals = [
  /\badded (?<count>\d+) (?<named>\p{L}+)/u,
  /\badded (?<named>\p{L}+) x\s?(?<count>\d+)/u,
  /\b(?<count>\d+) (?<named>\p{L}+) (?:dazu|eingesetzt|added)\b/u,
]

/**
 * Finds water changes, new media and animals in a note, clause by clause. What is found is a proposal;
 * the note itself is always kept.
 *
 * @param gallon  the unit of a gallon, or undefined while that is not known
 */
export function readNote(text: string, gallon: 'US gal' | 'imp gal' | undefined): NoteSays {
  const events: NoteEvent[] = []
  let asksGallon = false
  let odd: string | undefined
  for (const clause of plain(text).split(/[,;.](?=\s|$)/)) {
    const [, mass] = ferric.test(clause) ? (grams.exec(clause) ?? []) : []
    const [, volume, unit] = waterChange.test(clause) ? (amount.exec(clause) ?? []) : []
    if (mass !== undefined) {
      events.push({
        kind: 'media',
        action: swapped.test(clause) ? 'replaced' : 'placed',
        mass_g: figure(mass),
      })
    } else if (unit === '%') {
      odd = 'a water change in per cent: give its litres to log it'
    } else if (volume !== undefined) {
      const inGallons = unit.startsWith('gal')
      asksGallon ||= inGallons
      const litres = inGallons ? gallon && convert(figure(volume), gallon, 'L') : figure(volume)
      if (litres !== undefined && litres > 0) events.push({ kind: 'water-change', volume_L: litres })
    }
    const found = animals.map((one) => one.exec(clause)?.groups).find((groups) => groups !== undefined)
    if (found) events.push({ kind: 'animals', count: Number(found.count), named: found.named })
  }
  return { events, gallon: asksGallon, ...(odd && { odd }) }
}

const figure = (text: string): number => Number(text.replace(',', '.'))
