import type { System } from '@holdfast/ecosystem'
import { algaeNames } from '@holdfast/facts/names'
import {
  type About,
  type Blank,
  type BodyOf,
  blanksOf,
  draftEntry,
  type EntryKind,
  issueInWords,
  type Moment,
  type MomentRead,
} from '@holdfast/logbook'
import { useState } from 'preact/hooks'
import { speak } from '../../shell/spoken.ts'
import { nameToRemember, type Texts, unitBlank, unitsFor, withUnits } from './own-texts.ts'
import { remember, remembered } from './remembered.ts'
import { type Filled, forgetStarted, keepStarted, started } from './started.ts'
import { isSame, momentOf } from './when.ts'

export interface FormOf {
  readonly kind: EntryKind
  readonly system: System
  /** Under which what is begun outlives a reload. */
  readonly name: string
  /** Begins the ids of its controls. */
  readonly prefix: string
  readonly start: Filled
  /** Of the entry that is corrected: kept to the letter where nobody touches the time. */
  readonly moment?: Moment
  readonly onLog: (body: BodyOf<EntryKind>, moment: Moment, typed: Texts) => void
}

/** What came of reading the form: all that is wrong and all that is asked. */
type Trouble = Omit<Extract<ReturnType<typeof draftEntry>, { ok: false }>, 'ok'>

const algae = algaeNames.map(({ key, title }) => ({ value: key, words: title }))

const noTrouble: Trouble = { issues: [], questions: [] }

/** A form over the blanks of a kind: what stands in it, what it comes to, and what to do with it. */
export function useForm({ kind, system, name, prefix, start, moment, onLog }: FormOf) {
  const [filled, setFilled] = useState<Filled>(() => started(name) ?? start)
  const [trouble, setTrouble] = useState<Trouble>(noTrouble)
  const [momentRead, setMomentRead] = useState<MomentRead | undefined>()

  const idOf = (blank: string): string => `${prefix}-${blank}`
  const about: About = { system, algae }
  /** Their order stays while the form is open. */
  const [used] = useState(() => remembered().choices)
  const blanks = blanksOf(kind, about, filled.typed).map((blank) =>
    lastFirst(blank, used[nameOfChoice(kind, blank)]),
  )
  const unitOf = (blank: Blank, { typed, units }: Filled): string =>
    units[blank.name] ??
    remembered().words[nameToRemember(kind, blank.name, typed)] ??
    (unitsFor(blank, blanks).length === 1 || blank.unit !== undefined
      ? unitsFor(blank, blanks)[0]
      : undefined) ??
    ''
  const texts = (of: Filled): Texts => {
    const there = blanksOf(kind, about, of.typed)
    return withUnits(
      there,
      of.typed,
      Object.fromEntries(there.map((blank) => [blank.name, unitOf(blank, of)])),
    )
  }
  const change = (next: Filled) => {
    setFilled(next)
    setTrouble(noTrouble)
    setMomentRead(undefined)
    keepStarted(name, next)
  }
  const log = (of: Filled = filled) => {
    const typed = texts(of)
    const draft = draftEntry(kind, typed, about)
    const read: MomentRead =
      moment && isSame(of.when, start.when)
        ? { ok: true, at: moment.at, precision: moment.precision }
        : momentOf(of.when, system.timeZone, new Date())
    setMomentRead(read)
    if (!draft.ok) {
      setTrouble(draft)
      speak([...draft.issues.map(issueInWords), ...draft.questions.map(({ question }) => question)].join(' '))
      const first = [...draft.questions.map(({ blank }) => blank), ...blanksWrong(blanks, draft)][0]
      if (first !== undefined) document.getElementById(idOf(first))?.focus()
      return
    }
    setTrouble(noTrouble)
    if (!read.ok) {
      speak('question' in read ? read.question.question : read.issues.map(issueInWords).join(' '))
      return document.getElementById(idOf('when'))?.focus()
    }
    const there = blanksOf(kind, about, of.typed)
    remember(kind, wordsToRemember(kind, there, typed), choicesToRemember(kind, there, typed))
    forgetStarted(name)
    // The next is often of the same day; a day that is not today stays in sight.
    setFilled({ typed: {}, units: {}, when: of.when })
    onLog(draft.body, { at: read.at, precision: read.precision }, typed)
    toNext(idOf(blanks[0]?.name ?? ''))
  }
  const type = (blank: string, text: string, from = filled): Filled => {
    const next = { ...from, typed: { ...from.typed, [blank]: text } }
    // A kit belongs to what it reads: another quantity has its own.
    if (kind !== 'reading' || blank !== 'quantity') return next
    const { kit: _, ...rest } = next.typed
    const kit = remembered().words[nameToRemember(kind, 'kit', next.typed)]
    return { ...next, units: {}, typed: kit === undefined ? rest : { ...rest, kit } }
  }
  const draft = draftEntry(kind, texts(filled), about)
  return {
    idOf,
    blanks: blanks.filter((blank) => blank !== unitBlank(blanks)),
    filled,
    trouble,
    momentRead,
    body: draft.ok ? draft.body : undefined,
    unitOf: (blank: Blank) => unitOf(blank, filled),
    unitsOf: (blank: Blank) => unitsFor(blank, blanks),
    asksUnit: (blank: Blank) =>
      unitsFor(blank, blanks).length > 1 &&
      trouble.issues.some(({ where, code }) => where === blank.label && code === 'no-unit'),
    issuesOf: ({ label }: Blank) =>
      trouble.issues.filter(({ where }) => where === label).map((issue) => issueInWords(issue)),
    type: (blank: string, text: string) => change(type(blank, text)),
    choose: (blank: string, unit: string) => change({ ...filled, units: { ...filled.units, [blank]: unit } }),
    set: (when: Filled['when']) => change({ ...filled, when }),
    /** Says which of two hours it was and tries again. */
    sayWhen: (when: Filled['when']) => {
      change({ ...filled, when })
      log({ ...filled, when })
    },
    /** Whether this browser has words for a blank that may be left out. */
    isRemembered: ({ name }: Blank) => Boolean(remembered().words[nameToRemember(kind, name, filled.typed)]),
    /** Chooses a unit and tries again. */
    sayUnit: (blank: string, unit: string) => {
      const next = { ...filled, units: { ...filled.units, [blank]: unit } }
      change(next)
      log(next)
    },
    /** Puts the answer to a question into its blank and tries again. */
    answer: (blank: string, text: string) => {
      const next = type(blank, text)
      change(next)
      log(next)
    },
    log: () => log(),
  }
}

/** With keys the next entry begins at its first blank; a finger is done, and the keyboard on the glass goes away. */
function toNext(first: string): void {
  const next = matchMedia('(pointer: coarse)').matches ? undefined : document.getElementById(first)
  if (next) next.focus({ preventScroll: true })
  else if (document.activeElement instanceof HTMLElement) document.activeElement.blur()
}

const blanksWrong = (blanks: readonly Blank[], { issues }: Trouble): readonly string[] =>
  blanks.filter(({ label }) => issues.some(({ where }) => where === label)).map(({ name }) => name)

const nameOfChoice = (kind: EntryKind, { name }: Blank): string => `${kind} ${name}`

/** What was chosen last stands first, as far as the choices are those of the tank still. */
function lastFirst(blank: Blank, used: readonly string[] = []): Blank {
  const { choices } = blank
  if (choices === undefined || used.length === 0) return blank
  const first = used.flatMap((value) => choices.filter((choice) => choice.value === value))
  return { ...blank, choices: [...first, ...choices.filter((choice) => !first.includes(choice))] }
}

/** What was chosen where something must be. */
const choicesToRemember = (kind: EntryKind, blanks: readonly Blank[], typed: Texts): Texts =>
  Object.fromEntries(
    blanks.flatMap((blank) => {
      const text = typed[blank.name] ?? ''
      return blank.required && blank.holds === 'choice' && text !== ''
        ? [[nameOfChoice(kind, blank), text]]
        : []
    }),
  )

/** The units that figures were given in, and the kit. */
function wordsToRemember(kind: EntryKind, blanks: readonly Blank[], typed: Texts): Texts {
  const words = blanks.flatMap((blank): readonly (readonly [string, string])[] => {
    const text = typed[blank.name]?.trim() ?? ''
    const unit =
      (blank.name === 'value' && typed.unit) ||
      unitsFor(blank, blanks).find((one) => text.endsWith(` ${one}`))
    if (unit) return [[nameToRemember(kind, blank.name, typed), unit]]
    return blank.name === 'kit' ? [[nameToRemember(kind, 'kit', typed), text]] : []
  })
  return Object.fromEntries(words)
}
