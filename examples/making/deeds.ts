import type { Deed } from './story.ts'

export const fed = (date: string, g_per_day: number, text: string): Deed => ({
  date,
  kind: 'feeding',
  body: { g_per_day, text },
})

export const changed = (date: string, volume_L: number, text = `water change ${volume_L} L`): Deed => ({
  date,
  kind: 'water-change',
  body: { volume_L, text },
})

interface Plucked {
  readonly surface: string
  readonly algae: string
  readonly share: number
  readonly text: string
}

export const plucked = (date: string, { surface, algae, share, text }: Plucked): Deed => ({
  date,
  kind: 'hand-removal',
  body: { surface, algae, share, leftToDrift: false, text },
})

export const freshMedia = (date: string, mass_g: number): Deed => ({
  date,
  kind: 'media',
  body: { action: 'replaced', medium: 'phosphate media', mass_g, text: `new ferric media, ${mass_g} g` },
})

export const note = (date: string, text: string): Deed => ({ date, kind: 'note', body: { text } })

/** In the order of the calendar. */
export const inOrder = (deeds: readonly Deed[]): readonly Deed[] =>
  [...deeds].sort((a, b) => (a.date < b.date ? -1 : a.date > b.date ? 1 : 0))
