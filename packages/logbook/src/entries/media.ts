import { choicesOf } from './blank.ts'
import { asTyped, kind, type OldBody, positive, typedTexts } from './kind.ts'
import { figure, inWordsOf } from './says.ts'
import { z } from './schema.ts'

const mediums = ['phosphate media', 'activated carbon'] as const

/**
 * Media that bind; `mass_g` is dry. Old media removed and new placed at once is 'replaced'. Version 1 knew
 * phosphate media alone.
 */
export const media = kind({
  name: 'media',
  title: 'Media',
  v: 2,
  body: {
    action: z.enum(['placed', 'removed', 'replaced']),
    medium: z.enum(mediums),
    mass_g: z.exactOptional(positive),
    text: asTyped,
    typed: typedTexts,
  },
  lifts: { 1: ofPhosphate },
  blanks: (_, { action }) => [
    {
      name: 'action',
      label: 'What was done',
      holds: 'choice',
      required: true,
      hint: 'Placed, removed, or old replaced by new',
      choices: [
        { value: 'placed', words: 'placed' },
        { value: 'replaced', words: 'old replaced by new' },
        { value: 'removed', words: 'removed' },
      ],
    },
    {
      name: 'medium',
      label: 'Which media',
      holds: 'choice',
      required: true,
      hint: 'Phosphate media or activated carbon',
      choices: choicesOf(mediums),
    },
    ...(action === 'removed' ? [] : [mass]),
  ],
  understand: (filled) => ({
    action: filled.words('action') as 'placed' | 'removed' | 'replaced',
    medium: filled.words('medium') as (typeof mediums)[number],
    ...filled.numberAs('mass_g', 'mass'),
    text: filled.typed.mass ?? '',
    typed: filled.typed,
  }),
  fills: ({ action, medium, mass_g }) => ({
    action,
    medium,
    ...(mass_g !== undefined && { mass: `${mass_g} g` }),
  }),
  says: (body) => {
    const { action, medium, mass_g } = body
    const what = `${medium.slice(0, 1).toUpperCase()}${medium.slice(1)} ${action}`
    return inWordsOf(body, mass_g === undefined ? what : `${what}, ${figure(mass_g)} g`)
  },
})

const mass = {
  name: 'mass',
  label: 'Dry mass',
  holds: 'mass',
  required: false,
  above: 0,
  hint: 'Such as 200 g; without it the model cannot take the media',
} as const

/** What was typed then is asked for its medium today, so that a correction begins with all its blanks filled. */
function ofPhosphate({ typed, ...body }: OldBody): OldBody {
  const [medium] = mediums
  return { ...body, medium, ...(typed instanceof Object && { typed: { ...typed, medium } }) }
}
