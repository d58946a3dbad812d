import type { System } from '@holdfast/ecosystem'
import { algaeNames } from '@holdfast/facts/names'
import {
  type Blank,
  type BlankQuestion,
  type BodyOf,
  blanksOf,
  draftEntry,
  type EntryKind,
  type Issue,
  kinds,
  type Moment,
  Refused,
  readMoment,
  type Typed,
} from '@holdfast/logbook'
import { refuse } from '../../refuse.ts'

/** The kinds that a person fills in, by name. */
export const writtenKinds = kinds.map(({ name }) => name).filter((name) => blanksOf(name).length > 0)

const algae = algaeNames.map(({ key, title }) => ({ value: key, words: title }))

/** What makes an entry, or what must be asked first. */
export type Drafted =
  | ({ readonly body: BodyOf<EntryKind> } & Moment)
  | { readonly questions: readonly BlankQuestion[] }

/**
 * Reads what was typed and when it was so.
 *
 * @param at  text of a moment, or a moment that is known
 * @throws Refused with every issue of the texts and of the moment
 */
export function drafted(kind: EntryKind, typed: Typed, at: string | Moment, system: System): Drafted {
  const draft = draftEntry(kind, typed, { system, algae })
  const moment = typeof at === 'string' ? readMoment(at, system.timeZone) : ({ ok: true, ...at } as const)
  const issues: readonly Issue[] = [
    ...(draft.ok ? [] : draft.issues),
    ...(!moment.ok && 'issues' in moment ? moment.issues : []),
  ]
  if (issues.length > 0) throw new Refused(issues)
  if (draft.ok && moment.ok) return { body: draft.body, at: moment.at, precision: moment.precision }
  return {
    questions: [
      ...(draft.ok ? [] : draft.questions),
      ...(!moment.ok && 'question' in moment ? [{ blank: 'at', ...moment.question }] : []),
    ],
  }
}

/**
 * Puts texts without a name into the blanks that must be filled in, in their order: what is asked next may
 * hang on what was said before.
 *
 * @throws Refused where more was said than is asked
 */
export function filledInOrder(
  kind: EntryKind,
  named: Typed,
  texts: readonly string[],
  system: System,
): Typed {
  let typed = named
  const next = (): Blank | undefined =>
    blanksOf(kind, { system, algae }, typed).find(
      ({ name, required }) => required && typed[name] === undefined,
    )
  for (const text of texts) {
    const blank = next()
    if (blank === undefined) {
      const names = blanksOf(kind, { system, algae }, typed).map(({ name }) => `--${name}`)
      throw refuse(
        'too-much',
        `"${text}"`,
        'there is no blank left that must be filled in',
        `The others are named: ${names.join(', ')}.`,
        'Nothing is stored.',
      )
    }
    typed = { ...typed, [blank.name]: text }
  }
  return typed
}
