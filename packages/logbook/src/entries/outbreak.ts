import type { Typed } from './blank.ts'
import { surfacesOf } from './described.ts'
import type { Filled } from './fill-in.ts'
import { asTyped, kind, name, typedTexts } from './kind.ts'
import { inWordsOf } from './says.ts'
import { z } from './schema.ts'

/** The life of an outbreak, in its usual order; one that is back starts over. */
export const stages = ['seen', 'named', 'held', 'gone', 'watched', 'closed', 'back'] as const
export type Stage = (typeof stages)[number]

const words: Readonly<Record<Stage, string>> = {
  seen: 'seen for the first time',
  named: 'named: it is known what it is',
  held: 'held: it does not grow on',
  gone: 'gone',
  watched: 'watched, so that it does not come back unseen',
  closed: 'closed',
  back: 'back again',
}

const details = {
  surface: z.exactOptional(name),
  algae: z.exactOptional(name),
  carriedIn: z.exactOptional(name),
  done: z.exactOptional(name),
  stopped: z.exactOptional(name),
} as const
type Detail = keyof typeof details

/** A step in the life of an outbreak: what became of it, and what was done or stopped then. */
export const outbreak = kind({
  name: 'outbreak',
  title: 'Outbreak',
  v: 1,
  body: { outbreak: name, stage: z.enum(stages), ...details, text: asTyped, typed: typedTexts },
  blanks: (about, { stage }: Typed) => [
    {
      name: 'outbreak',
      label: 'Which outbreak',
      holds: 'words',
      required: true,
      hint: 'Your name for it, the same each time, such as hair on the overflow',
    },
    {
      name: 'stage',
      label: 'How it stands',
      holds: 'choice',
      required: true,
      hint: 'Seen, named, held, gone, watched, closed, or back',
      choices: stages.map((value) => ({ value, words: words[value] })),
    },
    {
      name: 'algae',
      label: 'What it is',
      holds: 'words',
      required: stage === 'named',
      hint: 'Such as hair_green; the field key names it',
    },
    {
      name: 'surface',
      label: 'Where',
      required: false,
      hint: 'A surface of the system, where it sits on one above all',
      ...surfacesOf(about),
    },
    {
      name: 'carried-in',
      label: 'Carried in with',
      holds: 'words',
      required: false,
      hint: 'Such as frags of 3 May',
    },
    {
      name: 'done',
      label: 'What was done',
      holds: 'words',
      required: false,
      hint: 'A measure of the ladder, such as pulled by hand',
    },
    {
      name: 'stopped',
      label: 'What was stopped',
      holds: 'words',
      required: false,
      hint: 'What was done before and is done no more, such as weekly siphoning',
    },
  ],
  understand: (filled) => ({
    outbreak: filled.words('outbreak'),
    stage: filled.words('stage') as Stage,
    ...detailsOf(filled),
    text: filled.typed.stage ?? '',
    typed: filled.typed,
  }),
  fills: ({ outbreak: called, stage, surface, algae, carriedIn, done, stopped }) =>
    withoutGaps({ outbreak: called, stage, surface, algae, 'carried-in': carriedIn, done, stopped }),
  says: (body) => {
    const { surface, algae, carriedIn, done, stopped } = body
    const more = [
      surface === undefined ? '' : ` on ${surface}`,
      algae === undefined ? '' : `, ${algae}`,
      carriedIn === undefined ? '' : `; carried in with ${carriedIn}`,
      done === undefined ? '' : `; done: ${done}`,
      stopped === undefined ? '' : `; stopped: ${stopped}`,
    ]
    return inWordsOf(body, `Outbreak "${body.outbreak}" ${words[body.stage]}${more.join('')}`)
  },
  // Of two that say at one moment how it stands, the later received holds.
  settles: ({ outbreak: called }) => called,
})

function detailsOf(filled: Filled): { [key in Detail]?: string } {
  const blankOf = (key: Detail): string => (key === 'carriedIn' ? 'carried-in' : key)
  const told = (Object.keys(details) as readonly Detail[]).filter((key) => filled.has(blankOf(key)))
  return Object.fromEntries(told.map((key) => [key, filled.words(blankOf(key))]))
}

const withoutGaps = (texts: Readonly<Record<string, string | undefined>>): Typed =>
  Object.fromEntries(Object.entries(texts).filter((pair): pair is [string, string] => pair[1] !== undefined))
