import { convert } from '@holdfast/quantities'

import type { NoteEvent } from '../sheet.ts'
import { formOf, isUnitOf, readHeader } from '../table/header.ts'
import { waterChangePhrase } from '../words/names.ts'
import { plain } from '../words/plain.ts'

/** What a note says that can be logged; `gallon` true where it hangs on which gallon is meant. */
export interface NoteSays {
  readonly events: readonly NoteEvent[]
  readonly gallon: boolean
  /** What looks like an event and could not be taken. */
  readonly odd?: string
}

const changed = /\b(?:changed|gewechselt|changes?|change|cambiati|cambiados?|ververst|wechsel)\b/
const amount =
  /(\d+(?:[.,]\d+)?)\s*(l|lt|ltr|liter|litre|litres|liters|litros?|litri|gal|gals|gallons?|%|prozent|percent|pct)(?![a-z])/
const ferric =
  /\b(?:adsorber|phosphate media|ferric(?: media| oxide| hydroxide)?|gfo|absorber|rowa|ferro|resin|harz|resine|resina)\b/
const grams = /(\d+(?:[.,]\d+)?)\s*(k?g)(?![a-z])/
const swapped =
  /\b(?:changed|replaced|swapped|gewechselt|erneuert|getauscht|remplacee?|cambiad[oa]|sostituit[oa]|vervangen)\b/
const animals = [
  /\badded (?<count>\d+)(?: x)? (?:new )?(?<named>\p{L}+)/u,
  /\badded (?<named>\p{L}+) x\s?(?<count>\d+)/u,
  /\b(?<count>\d+) (?:new |neue |nouveaux |nuevos |nieuwe )?(?<named>\p{L}+) (?:dazu|eingesetzt|added|in\b(?! the)|introduced|hinzugefugt|eingezogen|ajoutee?s?|anadid[oa]s?|aggiunt[ieao]|toegevoegd|erbij)/u,
  /\b(?:ajoutee?s?|anad\w+|aggiunt\w+|toegevoegd|introduced|neu:?|put in|introduit|inserit\w+|metid[oa]s?) (?<count>\d+) (?<named>\p{L}+)/u,
]
/** What is counted in a note and is no animal. */
const things =
  /^(?:l|liter|litre|litres|liters|g|gram|grams|ml|drops?|tropfen|kg|days?|tage|hours?|hrs?|min|pumps?|cubes?|bags?|scoops?|x|h|gal|gallons?|frags?|corals?|korallen)$/
const newKit =
  /\b(?:new|neue[rns]?|nouveau|nouvelle|nuevo|nueva|nuovo|nuova|nieuwe?|switched to|other|anderer?|different)\b[^,;.]*\b(?:kit|test|tests|testkit|reagents?|reagenz\w*|photometer|checker|meter|probe|sonde)\b|\b(?:kit|testkit|test)\b[^,;.]*\b(?:changed|gewechselt|neu|nouveau|nuevo|nuovo|nieuw)\b/
const nowAs =
  /\b(?:now|from now on|ab jetzt|jetzt|nun|desormais|maintenant|ahora|ora|adesso|da ora|nu|vanaf nu|from here|ab hier)\b.*?\b(?:as|in|als|en|como|come)\s+(\S+)/
const off =
  /\b(?:power (?:cut|out|outage|failure)|outage|blackout|stromausfall|panne(?: de courant)?|coupure|apagon|corte de luz|stroomuitval|stroomstoring|pump (?:off|failed|stopped)|return off|ausgefallen|blackout)\b/
const hours =
  /(\d+(?:[.,]\d+)?)\s*(h|hr|hrs|hours?|std|stunden?|heures?|horas?|ore|uur|min|minutes?|minuten)(?![a-z])/

/**
 * Finds water changes, media, animals, changes of kit or of unit and failures in a note, clause by clause.
 * What is found is a proposal; the note itself is always kept.
 *
 * @param gallon  the unit of a gallon, or undefined while that is not known
 */
export function readNote(text: string, gallon: 'US gal' | 'imp gal' | undefined): NoteSays {
  const events: NoteEvent[] = []
  let asksGallon = false
  let odd: string | undefined
  for (const clause of plain(text).split(/[,;.](?=\s|$)|\s\+\s/)) {
    const [, mass, massUnit] = ferric.test(clause) ? (grams.exec(clause) ?? []) : []
    const isChange = waterChangePhrase.test(clause) || changed.test(clause)
    const [, volume, unit = ''] = isChange ? (amount.exec(clause) ?? []) : []
    if (mass !== undefined) {
      const mass_g = figure(mass) * (massUnit === 'kg' ? 1000 : 1)
      events.push({ kind: 'media', action: swapped.test(clause) ? 'replaced' : 'placed', mass_g })
    } else if (/^(?:%|p)/.test(unit)) {
      odd = 'a water change in per cent: give its litres to log it'
    } else if (volume !== undefined) {
      const inGallons = unit.startsWith('gal')
      asksGallon ||= inGallons
      const litres = inGallons ? gallon && convert(figure(volume), gallon, 'L') : figure(volume)
      if (litres !== undefined && litres > 0) events.push({ kind: 'water-change', volume_L: litres })
    }
    events.push(...animalsIn(clause), ...kitIn(clause), ...unitIn(clause), ...failureIn(clause))
  }
  return { events, gallon: asksGallon, ...(odd && { odd }) }
}

function animalsIn(clause: string): readonly NoteEvent[] {
  const found = animals.map((one) => one.exec(clause)?.groups).find((groups) => groups !== undefined)
  const { count, named = '' } = found ?? {}
  if (count === undefined || things.test(named) || waterChangePhrase.test(clause)) return []
  return [{ kind: 'animals', count: Number(count), named }]
}

function kitIn(clause: string): readonly NoteEvent[] {
  if (!newKit.test(clause)) return []
  const { quantity } = quantityIn(clause)
  return [{ kind: 'kit-change', ...(quantity !== undefined && { quantity }) }]
}

/** "PO4 now read as P": the form, or the unit, from that day on. */
function unitIn(clause: string): readonly NoteEvent[] {
  const [, said = ''] = nowAs.exec(clause) ?? []
  const { quantity } = quantityIn(clause)
  if (said === '' || quantity === undefined) return []
  const form = formOf(quantity, said)
  if (form !== undefined) return [{ kind: 'unit-change', quantity, form }]
  return isUnitOf(quantity, said) ? [{ kind: 'unit-change', quantity, unit: said }] : []
}

function failureIn(clause: string): readonly NoteEvent[] {
  const [, count, unit = ''] = off.test(clause) ? (hours.exec(clause) ?? []) : []
  if (count === undefined) return []
  return [{ kind: 'equipment-off', hours: figure(count) / (unit.startsWith('min') ? 60 : 1) }]
}

/** The first word of a clause that names a quantity. */
function quantityIn(clause: string): Pick<ReturnType<typeof readHeader>, 'quantity'> {
  for (const word of clause.split(/\s+/)) {
    const { quantity } = readHeader(word)
    if (quantity !== undefined && word.length > 1) return { quantity }
  }
  return {}
}

const figure = (text: string): number => Number(text.replace(',', '.'))
