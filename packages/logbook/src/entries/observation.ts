import type { Issue } from '../issue.ts'
import { surfacesOf } from './described.ts'
import type { NotUnderstood } from './fill-in.ts'
import { asTyped, kind, name, typedTexts } from './kind.ts'
import { inWordsOf } from './says.ts'
import { z } from './schema.ts'

/** States by their traits, such as { colour: 'brown' }. */
type Traits = Readonly<Record<string, string>>

/** What was noted of a growth on a surface; the field key says what it is. */
export const observation = kind({
  name: 'observation',
  title: 'Look at a growth',
  v: 1,
  body: { surface: name, traits: z.record(name, name), text: asTyped, typed: typedTexts },
  blanks: (about) => [
    {
      name: 'surface',
      label: 'Surface',
      required: true,
      hint: 'A surface of the system',
      ...surfacesOf(about),
    },
    {
      name: 'traits',
      label: 'What you noted',
      holds: 'words',
      required: true,
      hint: 'Trait and state, such as colour=brown form=dust_film; the field key fills it in',
    },
  ],
  understand: (filled) => {
    const traits = traitsIn(filled.words('traits'))
    if ('issues' in traits) return traits
    const text = filled.typed.traits ?? ''
    return { surface: filled.words('surface'), traits: traits.read, text, typed: filled.typed }
  },
  fills: ({ surface, traits }) => ({ surface, traits: typedTraits(traits) }),
  says: (body) => inWordsOf(body, `Noted on ${body.surface}: ${traitsInWords(body.traits)}`),
})

/** Traits as they are typed into the blank. @example typedTraits({ colour: 'brown' }) // 'colour=brown' */
export const typedTraits = (traits: Traits): string =>
  Object.entries(traits)
    .map(([trait, state]) => `${trait}=${state}`)
    .join(' ')

const traitsInWords = (traits: Traits): string =>
  Object.entries(traits)
    .map(([trait, state]) => `${spaced(trait)} ${spaced(state)}`)
    .join(', ')

const spaced = (key: string): string => key.replaceAll('_', ' ')

/** Every trait, or every part that is none: nothing of a note is dropped. */
function traitsIn(text: string): { readonly read: Traits } | NotUnderstood {
  const parts = text.split(/[\s,;]+/).filter((part) => part !== '')
  const pairs = parts.map((part) => /^([^=]+)=([^=]+)$/.exec(part) ?? part)
  const issues = pairs.flatMap((pair, i) => {
    if (typeof pair === 'string') return [issue(`"${pair}" is no trait with its state`)]
    const earlier = pairs.slice(0, i).some((other) => typeof other !== 'string' && other[1] === pair[1])
    return earlier ? [issue(`"${pair[1]}" is noted twice`)] : []
  })
  if (issues.length > 0) return { issues, questions: [] }
  const read = pairs.flatMap((pair) => (typeof pair === 'string' ? [] : [[pair[1], pair[2]] as const]))
  return { read: Object.fromEntries(read) }
}

const issue = (got: string): Issue => ({
  code: 'no-trait',
  where: 'What you noted',
  got,
  accepted: 'Each trait once, with its state.',
  next: 'Write it such as colour=brown form=dust_film.',
})
