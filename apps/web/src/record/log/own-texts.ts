import type { Blank } from '@holdfast/logbook'
import { isQuantityName, quantities } from '@holdfast/quantities'
import { hasOwnUnit } from '../own-unit.ts'

/** Texts by the names of their blanks. */
export type Texts = Readonly<Record<string, string>>

/** Units that a figure of this blank is given in, the usual first; none for what has no unit. */
export function unitsFor(blank: Blank, blanks: readonly Blank[]): readonly string[] {
  const { holds } = blank
  const offered =
    blank.name === 'value' ? (unitBlank(blanks)?.choices ?? []).map(({ value }) => value) : unitsOf(holds)
  return [...new Set([...(blank.unit === undefined ? [] : [blank.unit]), ...offered])]
}

function unitsOf(holds: Blank['holds']): readonly string[] {
  if (holds === 'share') return ['%']
  if (holds === 'mass-per-day') return quantities.mass.common.map((unit) => `${unit}/d`)
  return isQuantityName(holds) ? quantities[holds].common : []
}

/** The blank that holds the unit of the blank "value", where the kind has both. */
export const unitBlank = (blanks: readonly Blank[]): Blank | undefined =>
  blanks.some(({ name }) => name === 'value') ? blanks.find(({ name }) => name === 'unit') : undefined

/** The name under which a unit or a kit is remembered: that of the blank, and of what is read. */
export const nameToRemember = (kind: string, blank: string, { quantity = '' }: Texts): string =>
  [kind, quantity, blank].filter((part) => part !== '').join(' ')

/**
 * The texts as they are to be read: a unit chosen beside a bare figure is written behind it, or into
 * the blank that the kind has for it. A figure with a unit of its own keeps that.
 */
export function withUnits(blanks: readonly Blank[], typed: Texts, units: Texts): Texts {
  const ofValue = unitBlank(blanks)?.name
  const known = new Set(blanks.map(({ name }) => name))
  const texts = Object.entries(typed).filter(([name]) => known.has(name) && name !== ofValue)
  return Object.fromEntries(
    texts.flatMap(([name, text]) => {
      const unit = units[name] ?? ''
      if (unit === '' || text.trim() === '' || hasOwnUnit(text)) return [[name, text]]
      return name === 'value' && ofValue !== undefined
        ? [
            [name, text],
            [ofValue, unit],
          ]
        : [[name, `${text.trim()} ${unit}`]]
    }),
  )
}
