import type { EntryOf, Stored } from './entries/entry.ts'
import type { Stage } from './entries/outbreak.ts'
import { standing } from './entries/standing.ts'

/** An outbreak as its entries tell it. */
export interface Outbreak {
  readonly name: string
  readonly stage: Stage
  /** ISO dates: of its first entry, and of the one that gave the stage. */
  readonly from: string
  readonly since: string
  /** Kind of algae, where it was named. */
  readonly algae?: string
  readonly surfaces: readonly string[]
  readonly carriedIn?: string
  /** What was done and what was stopped, with the date of each. */
  readonly done: readonly Dated[]
  readonly stopped: readonly Dated[]
  /** Of one that is back: the last thing done before it was held or gone, which the next ladder starts at. */
  readonly worked?: string
}

export interface Dated {
  readonly what: string
  readonly on: string
}

type Step = EntryOf<'outbreak'>

/** The outbreaks of a system by the entries that stand, the one that changed last first. */
export function outbreaksOf(stored: readonly Stored[]): readonly Outbreak[] {
  const steps = standing(stored)
    .filter((entry): entry is Stored & Step => entry.kind === 'outbreak')
    .toSorted((a, b) => (a.at < b.at ? -1 : a.at > b.at ? 1 : 0))
  const called = ({ body }: Step): string => body.outbreak.trim().toLowerCase()
  return [...new Set(steps.map(called))]
    .map((name) => lifeOf(steps.filter((step) => called(step) === name)))
    .toSorted((a, b) => (a.since < b.since ? 1 : -1))
}

function lifeOf(steps: readonly Step[]): Outbreak {
  const [first] = steps
  const last = steps[steps.length - 1]
  const lastTold = <K extends 'algae' | 'carriedIn'>(key: K) => {
    const told = steps.findLast(({ body }) => body[key] !== undefined)?.body[key]
    return told === undefined ? {} : { [key]: told }
  }
  const worked = last.body.stage === 'back' ? beforeItEnded(steps) : undefined
  return {
    name: first.body.outbreak,
    stage: last.body.stage,
    from: dateIn(first),
    since: dateIn(steps.findLast(({ body }, at) => body.stage !== steps[at - 1]?.body.stage) ?? last),
    ...lastTold('algae'),
    surfaces: [...new Set(steps.flatMap(({ body: { surface } }) => surface ?? []))],
    ...lastTold('carriedIn'),
    done: told(steps, 'done'),
    stopped: told(steps, 'stopped'),
    ...(worked === undefined ? {} : { worked }),
  }
}

function beforeItEnded(steps: readonly Step[]): string | undefined {
  const ended = steps.findLastIndex(({ body: { stage } }) => stage === 'held' || stage === 'gone')
  return steps.slice(0, ended + 1).findLast(({ body }) => body.done !== undefined)?.body.done
}

const told = (steps: readonly Step[], key: 'done' | 'stopped'): readonly Dated[] =>
  steps.flatMap((step) => {
    const what = step.body[key]
    return what === undefined ? [] : [{ what, on: dateIn(step) }]
  })

const dateIn = ({ at }: Step): string => at.slice(0, 10)
