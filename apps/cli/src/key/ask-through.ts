import type { Trait } from '@holdfast/facts'
import { type Answers, identify } from '@holdfast/identification'
import type { Terminal } from '../terminal.ts'
import { foundInWords, questionInWords } from './found-in-words.ts'

/** One thing said: a state, or that it cannot be told. */
interface Said {
  readonly trait: string
  readonly state: string | undefined
}

/** Asks one look after the other; an answer can be taken back, and what cannot be told is passed over. */
export async function askedThrough(
  noted: Answers,
  unknown: readonly string[],
  terminal: Terminal,
  asks: (question: string) => Promise<string>,
): Promise<void> {
  let said: readonly Said[] = []
  for (;;) {
    const answers = Object.fromEntries([
      ...Object.entries(noted),
      ...said.flatMap(({ trait, state }) => (state === undefined ? [] : [[trait, state] as const])),
    ])
    const cannotTell = said.flatMap(({ trait, state }) => (state === undefined ? [trait] : []))
    const found = identify(answers, [...unknown, ...cannotTell])
    terminal.out(`${foundInWords(found)}\n`)
    const { next } = found
    if (next === undefined) return
    terminal.out(questionInWords(next))
    const typed = await typedFor(next, terminal, asks)
    if (typed === 'end') return
    said = typed === 'back' ? said.slice(0, -1) : [...said, { trait: next.key, state: typed?.state }]
    terminal.out('')
  }
}

/** The state of a number or a name; undefined where it cannot be told. Asks again until it can be read. */
async function typedFor(
  { key, states }: Trait,
  terminal: Terminal,
  asks: (question: string) => Promise<string>,
): Promise<{ readonly state: string } | 'back' | 'end' | undefined> {
  for (;;) {
    const typed = (await asks('Number; Enter: cannot tell; b: take the last one back; q: end > ')).trim()
    if (typed === '') return undefined
    if (typed === 'b') return 'back'
    if (typed === 'q') return 'end'
    const state = states.find((one, i) => typed === String(i + 1) || typed === one.key)
    if (state !== undefined) return { state: state.key }
    terminal.err(
      `${key}: "${typed}" is no answer. Give a number from 1 to ${states.length}, Enter, b or q.\n`,
    )
  }
}
