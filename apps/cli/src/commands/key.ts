import { finerKinds, traits } from '@holdfast/facts'
import { type Answers, answerable, identify, readAnswers } from '@holdfast/identification'
import { Refused } from '@holdfast/logbook'
import { askedThrough } from '../key/ask-through.ts'
import { foundAsJson } from '../key/found-as-json.ts'
import { foundInWords, questionInWords } from '../key/found-in-words.ts'
import { refuse } from '../refuse.ts'
import { table } from '../table.ts'
import type { Terminal } from '../terminal.ts'

export interface KeyOptions {
  /** Traits that cannot be looked at. */
  readonly unknown: readonly string[]
  readonly traits?: true
  readonly json?: true
}

/**
 * Tells what a growth is from trait=state, each as noted; asks on where somebody is there to answer.
 *
 * @param noted  such as colour=brown
 */
export async function keyCommand(
  noted: readonly string[],
  options: KeyOptions,
  terminal: Terminal,
): Promise<void> {
  if (options.traits) return terminal.out(options.json ? traitsAsJson() : traitsInWords())
  const answers = answersOf(noted)
  const passedOver = options.unknown.map(traitNamed)
  if (options.json) return terminal.out(JSON.stringify(foundAsJson(identify(answers, passedOver)), null, 2))
  if (terminal.asks !== undefined) return askedThrough(answers, passedOver, terminal, terminal.asks)
  const found = identify(answers, passedOver)
  terminal.out(foundInWords(found))
  if (found.next) terminal.out(`\nNext: ${questionInWords(found.next)}`)
}

/** @throws Refused with every issue at once */
function answersOf(noted: readonly string[]): Answers {
  const pairs = noted.map((word): readonly [string, string] => {
    const at = word.indexOf('=')
    if (at > 0) return [word.slice(0, at), word.slice(at + 1)]
    throw refuse(
      'no-trait',
      'Traits',
      `"${word}" has no "="`,
      'Trait and state.',
      'Give such as colour=brown.',
    )
  })
  const twice = pairs.find(([key], i) => pairs.findIndex(([other]) => other === key) !== i)
  if (twice !== undefined)
    throw refuse('trait-twice', twice[0], 'is given twice', 'One state.', 'Give it once.')
  const read = readAnswers(Object.fromEntries(pairs))
  if (read.ok) return read.answers
  throw new Refused(
    read.issues.map((issue) => ({
      ...issue,
      got: `"${issue.got}" is not known`,
      accepted: issue.next,
      next: '',
    })),
  )
}

function traitNamed(key: string): string {
  const all = answerable().map((one) => one.key)
  if (all.includes(key)) return key
  throw refuse('unknown-trait', 'Traits', `"${key}" is not known`, `Name one of ${all.join(', ')}.`, '')
}

/** For whom a trait is: every growth, or the genera within one kind. */
const asked = [
  ...traits().map((one) => ({ one, within: '' })),
  ...finerKinds().flatMap(({ parent, traits: finer }) => finer.map((one) => ({ one, within: parent }))),
]

const traitsAsJson = (): string =>
  JSON.stringify(
    asked.map(({ one, within }) => ({ ...one, ...(within !== '' && { within }) })),
    null,
    2,
  )

const traitsInWords = (): string =>
  table(
    [{ heading: 'Trait' }, { heading: 'Looked at with' }, { heading: 'States' }],
    asked.map(({ one, within }) => [
      within === '' ? one.key : `${one.key} (${within})`,
      one.tool,
      one.states.map(({ key }) => key).join(', '),
    ]),
  )
