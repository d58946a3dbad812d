import {
  type Answer,
  isQuantityName,
  quantities,
  type Reading,
  type ReadingOptions,
  readQuantity,
  words,
} from '@holdfast/quantities'

import type { Issue } from '../issue.ts'
import { isDate } from '../model-day.ts'
import { nearest } from '../system-file/nearest.ts'
import type { Blank } from './blank.ts'
import type { BlankQuestion, Value } from './fill-in.ts'

/** A text of a blank, read; or what is wrong with it, or what must be asked. */
export type BlankRead =
  | { readonly ok: true; readonly value: Value }
  | { readonly ok: false; readonly issues: readonly Issue[] }
  | { readonly ok: false; readonly question: Omit<BlankQuestion, 'blank'> }

/** Reads one text. Figures come in the canonical unit of their quantity, shares 0 to 1. */
export function readBlank(blank: Blank, text: string): BlankRead {
  const typed = text.trim()
  switch (blank.holds) {
    case 'words':
      return typed.length <= 20_000
        ? read(typed)
        : wrong(blank, 'too-long', 'it is longer than 20,000 letters')
    case 'choice':
      return readChoice(blank, typed)
    case 'date':
      return isDate(typed) ? read(typed) : wrong(blank, 'no-date', `"${typed}" is no date of the calendar`)
    case 'count':
      return /^\d+$/.test(typed) && Number(typed) > 0 && Number.isSafeInteger(Number(typed))
        ? read(Number(typed))
        : wrong(blank, 'no-count', `"${typed}" is no whole number above 0`)
    case 'number':
      return readNumber(blank, typed)
    case 'share':
      return readShare(blank, typed)
    case 'mass-per-day': {
      const everyDay = /\s*(?:\/|per|a|each)\s*d(?:ay)?\.?$/i
      return readAmount({ ...blank, holds: 'mass' }, typed.replace(everyDay, ''))
    }
    default:
      return readAmount(blank, typed)
  }
}

const read = (value: Value): BlankRead => ({ ok: true, value })

function wrong({ label, hint }: Blank, code: string, got: string, next = ''): BlankRead {
  return { ok: false, issues: [{ code, where: label, got, accepted: `${hint}.`, next }] }
}

function readChoice(blank: Blank, typed: string): BlankRead {
  const choices = blank.choices ?? []
  const plain = typed.toLowerCase()
  const chosen =
    choices.find(({ value }) => value === typed) ??
    choices.find((one) => [one.value, one.words].some((said) => said.toLowerCase() === plain))
  if (chosen !== undefined) return read(chosen.value)
  if (blank.open) return read(typed)
  const known = choices.map(({ words }) => words)
  const near = nearest(typed, known)
  const accepted = known.length === 0 ? 'There is none to choose from.' : `Known: ${known.join(', ')}.`
  const next = near === undefined ? 'Choose one of these.' : `Did you mean "${near}"?`
  const issue = {
    code: 'unknown-word',
    where: blank.label,
    got: `"${typed}" is not known here`,
    accepted,
    next,
  }
  return { ok: false, issues: [issue] }
}

function readNumber(blank: Blank, typed: string): BlankRead {
  const plain = /^[-+]?\d+(?:[.,]\d+)?(?:e[-+]?\d+)?$/i.test(typed)
  const value = Number(typed.replace(',', '.'))
  if (!plain || !Number.isFinite(value)) return wrong(blank, 'not-a-number', `"${typed}" is no number`)
  return within(blank, typed, value)
}

function within(blank: Blank, typed: string, value: number): BlankRead {
  const { above = -Infinity, from = -Infinity, to = Infinity } = blank
  if (value <= above) return wrong(blank, 'too-small', `"${typed}" is not above ${above}`)
  if (value < from) return wrong(blank, 'too-small', `"${typed}" is too small`)
  return value > to ? wrong(blank, 'too-big', `"${typed}" is too much`) : read(value)
}

function readShare(blank: Blank, typed: string): BlankRead {
  const [, figure, percent] = /^(\d+(?:[.,]\d+)?)\s*(%|percent)?$/i.exec(typed) ?? []
  if (figure === undefined) return wrong(blank, 'no-share', `"${typed}" is no share`)
  const value = Number(figure.replace(',', '.'))
  if (percent === undefined && value >= 1 && value <= 100) {
    const whole = value === 1 ? [{ value: '100 %', words: 'all of it' }] : []
    const options = [{ value: `${figure} %`, words: `${figure} of 100 parts` }, ...whole]
    return { ok: false, question: { question: `${blank.label}: is "${typed}" in percent?`, options } }
  }
  const share = percent === undefined ? value : value / 100
  return share > 1 ? wrong(blank, 'above-whole', `"${typed}" is more than the whole`) : read(share)
}

function readAmount(blank: Blank, typed: string): BlankRead {
  const { holds, label: where, unit, limits } = blank
  if (!isQuantityName(holds)) throw new Error(`blank ${blank.name} holds ${holds}, which is no quantity`)
  const options: ReadingOptions = { where, ...(unit !== undefined && { unit }) }
  const answer: Answer<Reading> = readQuantity(holds, typed, options)
  if (!answer.ok && answer.ask !== undefined) {
    const { question, options: offered } = answer.ask
    const choices = offered.map(({ answer: value, means }) => ({ value, words: means }))
    return { ok: false, question: { question, options: choices } }
  }
  if (!answer.ok) {
    const issues = answer.issues.map((issue): Issue => {
      const { code, got, accepted } = issue
      return {
        code,
        where,
        got: `"${got}"`,
        accepted: accepted.join(', '),
        next: blank.hint,
        inWords: words(issue),
      }
    })
    return { ok: false, issues }
  }
  if (limits) return read(answer.value)
  const { stated, canonical } = answer.value
  if (stated.is !== 'exact' && stated.is !== 'about')
    return wrong(blank, 'not-one-number', `"${typed}" is not one number`)
  if (canonical !== quantities[holds].canonical)
    return wrong(blank, 'other-scale', `"${typed}" is on another scale (${canonical})`)
  return within(blank, typed, stated.value)
}
