import { algaeKind, controlsOf } from '@holdfast/facts'
import type { Standing } from '../standing.ts'
import { type Found, percent } from './found.ts'

/** A growth where no mouth of this tank gets to. */
export function unreached({ growths }: Standing): Found | undefined {
  const growth = growths.find((one) => one.unreached)
  if (!growth || growth.mass_g < growths.reduce((sum, { mass_g }) => sum + mass_g, 0) / 2) return undefined
  const { kind, surface, cover } = growth
  return {
    key: 'unreached',
    rank: 'place',
    size: cover,
    says: `${capital(algaeKind(kind).title)} covers ${percent(cover)} of ${surface.id}, where no animal of this tank gets to: more animals outside, or leaner water, would not end it.`,
    steps: ['hand_removal', 'shade_surface', 'place_grazer_inside', 'crew_add', 'nutrients_lower'],
  }
}

/** Grazers that find too little in the months to come. */
export function hungry({ hungry }: Standing): Found | undefined {
  if (hungry.length === 0) return undefined
  return {
    key: 'hungry',
    rank: 'crew',
    size: 1,
    says: `Too little grows for the grazers: within two months ${hungry.join(', ')} will have used up half of what they can live on.`,
    steps: ['crew_feed', 'crew_reduce'],
  }
}

/** The growth that is meant. */
export function growth({ meant, growths }: Standing): Found | undefined {
  if (!meant) return undefined
  const places = growths.filter(({ kind }) => kind === meant.kind)
  const seen = places.map(({ surface, cover }) => `${percent(cover)} of ${surface.id}`)
  return {
    key: 'growth',
    rank: 'kind',
    size: 1,
    says: `${capital(meant.title)}${seen.length > 0 ? ` covers ${seen.join(', ')}` : ' is what this is about'}.`,
    steps: controlsOf(meant.kind).map(({ measure }) => measure),
  }
}

const capital = (text: string): string => text[0].toUpperCase() + text.slice(1)
