import type { Reading } from '@holdfast/quantities'

import type { Issue } from '../issue.ts'
import { nearest } from '../system-file/nearest.ts'
import type { Blank, Typed } from './blank.ts'
import { readBlank } from './read-blank.ts'

/** What must be asked before a blank is understood; each option is what to put into the blank instead. */
export interface BlankQuestion {
  readonly blank: string
  readonly question: string
  readonly options: readonly { readonly value: string; readonly words: string }[]
}

/** Why blanks do not make an entry yet: all that is wrong and all that must be asked. */
export interface NotUnderstood {
  readonly issues: readonly Issue[]
  readonly questions: readonly BlankQuestion[]
}

/** Every blank read, or every issue and question of them together. */
export type FilledIn =
  | { readonly ok: true; readonly filled: Filled }
  | ({ readonly ok: false } & NotUnderstood)

/** Reads what was typed into blanks; an empty text is a blank left out. */
export function fillIn(blanks: readonly Blank[], typed: Typed): FilledIn {
  const written = Object.entries(typed).filter(([, text]) => text.trim() !== '')
  const issues: Issue[] = written.flatMap(([name]) => unknownBlank(name, blanks))
  const questions: BlankQuestion[] = []
  const values = new Map<string, Value>()
  const texts = new Map(written)
  for (const blank of blanks) {
    const text = texts.get(blank.name)
    if (text === undefined) {
      if (blank.required) issues.push(missing(blank))
      continue
    }
    const read = readBlank(blank, text)
    if (read.ok) values.set(blank.name, read.value)
    else if ('question' in read) questions.push({ blank: blank.name, ...read.question })
    else issues.push(...read.issues)
  }
  if (issues.length > 0 || questions.length > 0) return { ok: false, issues, questions }
  return { ok: true, filled: new Filled(values, Object.fromEntries(written)) }
}

/** What a blank was read as. */
export type Value = number | string | Reading

/** The blanks of an entry, read. Asking for a blank that was left out, or as what it is not, is our own slip. */
export class Filled {
  readonly #values: ReadonlyMap<string, Value>
  /** The texts word for word. */
  readonly typed: Readonly<Record<string, string>>

  constructor(values: ReadonlyMap<string, Value>, typed: Readonly<Record<string, string>>) {
    this.#values = values
    this.typed = typed
  }

  has(name: string): boolean {
    return this.#values.has(name)
  }

  number(name: string): number {
    const value = this.#values.get(name)
    if (typeof value === 'number') return value
    throw new Error(`blank ${name} holds no number`)
  }

  words(name: string): string {
    const value = this.#values.get(name)
    if (typeof value === 'string') return value
    throw new Error(`blank ${name} holds no words`)
  }

  reading(name: string): Reading {
    const value = this.#values.get(name)
    if (typeof value === 'object') return value
    throw new Error(`blank ${name} holds no reading`)
  }

  /** A number under a key of the body, or nothing where the blank was left out. */
  numberAs<Key extends string>(key: Key, name: string): { readonly [K in Key]?: number } {
    return this.has(name) ? keyed(key, this.number(name)) : {}
  }

  /** Words under a key of the body, or nothing where the blank was left out. */
  wordsAs<Key extends string>(key: Key, name: string): { readonly [K in Key]?: string } {
    return this.has(name) ? keyed(key, this.words(name)) : {}
  }
}

// The compiler does not follow a computed key.
const keyed = <Key extends string, Of>(key: Key, value: Of): { readonly [K in Key]?: Of } =>
  ({ [key]: value }) as { readonly [K in Key]?: Of }

function missing({ label, hint }: Blank): Issue {
  return { code: 'missing', where: label, got: 'it is empty', accepted: `${hint}.`, next: 'Fill it in.' }
}

function unknownBlank(name: string, blanks: readonly Blank[]): Issue[] {
  const known = blanks.map((blank) => blank.name)
  if (known.includes(name)) return []
  const near = nearest(name, known)
  const accepted = `There is: ${known.join(', ')}.`
  const next = near === undefined ? 'Leave it out.' : `Did you mean "${near}"?`
  return [{ code: 'unknown-blank', where: 'Entry', got: `it has no "${name}"`, accepted, next }]
}
