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

/** Grazers that have used up half of their reserve. */
export function hungry({ hungry }: Standing): Found | undefined {
  if (hungry.length === 0) return undefined
  return {
    key: 'hungry',
    rank: 'crew',
    size: 1,
    says: `Too little grows for the grazers: ${hungry.join(', ')} live on their reserve.`,
    steps: ['crew_feed', 'crew_reduce'],
  }
}

/** The kind that is meant, or the one of which most grows. */
export function growth(standing: Standing): Found | undefined {
  const kind = kindOf(standing)
  if (kind === undefined) return undefined
  const places = standing.growths.filter((one) => one.kind === kind)
  const seen = places.map(({ surface, cover }) => `${percent(cover)} of ${surface.id}`)
  return {
    key: 'growth',
    rank: 'kind',
    size: 1,
    says: `${capital(algaeKind(kind).title)}${seen.length > 0 ? ` covers ${seen.join(', ')}` : ' is what you asked about'}.`,
    steps: controlsOf(kind).map(({ measure }) => measure),
  }
}

export const kindOf = ({ question, growths }: Standing): string | undefined =>
  question.kind ?? growths[0]?.kind

const capital = (text: string): string => text[0].toUpperCase() + text.slice(1)
