import { words } from '@holdfast/quantities'

import type { z } from '../entries/schema.ts'
import type { Issue } from '../issue.ts'
import { knownAt } from './known-at.ts'
import { faultKey, type TextFault } from './measured-text.ts'
import { nearest } from './nearest.ts'

type SchemaIssue = z.core.$ZodIssue

/** An issue of the schema in the keeper's words; `document` is what was typed. */
export function documentIssues(issue: SchemaIssue, document: unknown): readonly Issue[] {
  const where = placeInWords(issue.path)
  switch (issue.code) {
    case 'custom':
      return [faultIssue(where, issue.params?.[faultKey] as TextFault)]
    case 'unrecognized_keys':
      return issue.keys.map((key) => unknownKey(where, key, knownAt(issue.path, document)))
    case 'invalid_type': {
      const typed = at(document, issue.path)
      if (typed === undefined) return [missingKey(where, issue.expected)]
      const got = `${JSON.stringify(typed).slice(0, 60)} is not ${kindInWords(issue.expected)}`
      return [plain('wrong-type', where, got, `${capital(kindInWords(issue.expected))}.`)]
    }
    case 'invalid_value': {
      const typed = at(document, issue.path)
      if (typed === undefined) return [missingKey(where, 'string')]
      return [unknownWord(where, typed, issue.values.map(String))]
    }
    case 'invalid_union':
      return [unknownWord(where, at(document, issue.path), knownAt(issue.path, document))]
    case 'too_small':
      if (issue.origin === 'array') return [plain('none', where, 'there is none', 'At least one.')]
      return [
        plain(
          'too-small',
          where,
          `${JSON.stringify(at(document, issue.path))} is too small`,
          `At least ${issue.minimum}.`,
        ),
      ]
    case 'too_big':
      return [
        plain(
          'too-big',
          where,
          `${JSON.stringify(at(document, issue.path))} is too big`,
          `At most ${issue.maximum}.`,
        ),
      ]
    default:
      return [
        plain(
          issue.code,
          where,
          `${JSON.stringify(at(document, issue.path))} does not fit`,
          `${issue.message}.`,
        ),
      ]
  }
}

function faultIssue(where: string, fault: TextFault): Issue {
  if (fault.by === 'here') return plain(fault.code, where, fault.got, fault.accepted)
  if ('ask' in fault) {
    const { code, got, question, options } = fault.ask
    const answers = options.map(({ answer, means }) => `${answer} (${means})`).join(', ')
    const next = `Write one of: ${answers}.`
    return {
      code,
      where,
      got: `"${got}" can mean more than one thing`,
      accepted: answers,
      next,
      inWords: `${capital(where)}: ${rest(question)} ${next}`,
    }
  }
  const { issue } = fault
  const inWords = words({ ...issue, where: capital(where) })
  return {
    code: issue.code,
    where,
    got: `"${issue.got}"`,
    accepted: issue.accepted.join(', '),
    next: rest(inWords),
    inWords,
  }
}

/** The sentence without the name of the field before it. */
const rest = (sentence: string): string => sentence.slice(sentence.indexOf(':') + 1).trim()

function unknownKey(where: string, key: string, known: readonly string[]): Issue {
  const near = nearest(key, known)
  const next = near === undefined ? 'Leave it out.' : `Did you mean "${near}"?`
  const place = where === 'document' ? 'The file' : where
  return {
    code: 'unknown-key',
    where: place,
    got: `"${key}" is no key we know`,
    accepted: `Known: ${known.join(', ')}.`,
    next,
  }
}

function unknownWord(where: string, typed: unknown, known: readonly string[]): Issue {
  const near = typeof typed === 'string' ? nearest(typed, known) : undefined
  const next = near === undefined ? 'Choose one of these.' : `Did you mean "${near}"?`
  return {
    code: 'unknown-word',
    where,
    got: `${JSON.stringify(typed) ?? 'nothing'} is not known here`,
    accepted: `Known: ${known.join(', ')}.`,
    next,
  }
}

function missingKey(where: string, expected: string): Issue {
  return {
    ...plain('missing', where, 'it is missing', `${capital(kindInWords(expected))}.`),
    next: 'Add it.',
  }
}

function plain(code: string, where: string, got: string, accepted: string): Issue {
  return { code, where, got, accepted, next: 'Mend it in the file and read it again.' }
}

function at(document: unknown, path: readonly PropertyKey[]): unknown {
  let value = document
  for (const key of path)
    value = typeof value === 'object' && value !== null ? Reflect.get(value, key) : undefined
  return value
}

/** "surfaces 2, area": lists count from 1, as people do. */
function placeInWords(path: readonly PropertyKey[]): string {
  const said = path.map((key, place) =>
    typeof key === 'number' ? ` ${key + 1}` : `${place === 0 ? '' : ', '}${String(key)}`,
  )
  return said.join('') || 'document'
}

const kinds: Readonly<Record<string, string>> = {
  string: 'a text in quotes, such as "450 L"',
  number: 'a number without quotes',
  int: 'a whole number without quotes',
  boolean: 'true or false',
  array: 'a list in square brackets',
  tuple: 'a list in square brackets',
  object: 'an object in curly brackets',
}

const kindInWords = (expected: string): string => kinds[expected] ?? expected
const capital = (word: string): string => word.slice(0, 1).toUpperCase() + word.slice(1)
