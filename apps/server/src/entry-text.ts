import type { Entry } from '@holdfast/logbook'

/** What an entry says, in the keeper's own words where they are kept, as the page shows it. */
export function entryText(entry: Entry): string {
  switch (entry.kind) {
    case 'reading': {
      const { quantity, text, unit, form, kit } = entry.body
      const figure = [text, unit, form].filter((part) => part !== undefined && part !== '').join(' ')
      return `${capital(quantity)} ${figure}${kit === undefined ? '' : ` (${kit})`}`
    }
    case 'water-change':
      return said(entry.body.text, `Water change of ${entry.body.volume_L} L`)
    case 'feeding':
      return said(entry.body.text, `Fed ${entry.body.g_per_day} g/d from here on`)
    case 'media': {
      const { action, mass_g, text } = entry.body
      return said(text, `Phosphate media ${action}${mass_g === undefined ? '' : `, ${mass_g} g`}`)
    }
    case 'survey': {
      const { surface, algae, cover, text } = entry.body
      return said(text, `${algae} on ${Number((100 * cover).toPrecision(3))} % of ${surface}`)
    }
    case 'hand-removal': {
      const { surface, algae, share, text } = entry.body
      return said(text, `${Number((100 * share).toPrecision(3))} % of ${algae} on ${surface} removed by hand`)
    }
    case 'animals': {
      const { change, taxon, count, text } = entry.body
      return said(text, `${count} ${taxon} ${change}`)
    }
    case 'dose':
      return said(entry.body.text, `Dose of ${entry.body.mass_g} g ${entry.body.substance}`)
    case 'equipment-change':
      return said(entry.body.text, `Change of ${entry.body.equipment}`)
    case 'note':
      return entry.body.text
    case 'system':
      return entry.body.tells === 'mend' ? 'Description of the system, mended' : 'Description of the system'
    case 'retraction':
      return entry.body.of === 'batch' ? 'An import taken back' : 'An entry taken back'
  }
}

const said = (text: string, otherwise: string): string => (text.trim() === '' ? otherwise : text)
const capital = (word: string): string =>
  word === 'pH' ? word : word.slice(0, 1).toUpperCase() + word.slice(1)
