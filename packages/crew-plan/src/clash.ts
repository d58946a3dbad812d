import type { FactsOfSystem } from '@holdfast/facts'
import type { Clash, PlanIssue, Relaxation } from './answer.ts'
import { type CrewProgramme, handling, spending } from './crew-programme.ts'
import type { Programme, Row } from './programme.ts'
import type { Wishes } from './question.ts'
import type { Solver, SolverSettings } from './solver.ts'

/** The programme that other wishes would make. */
export type Made = (wishes: Wishes) => CrewProgramme

interface Question {
  readonly wishes: Wishes
  readonly made: Made
  readonly facts: FactsOfSystem
  readonly solver: Solver
  readonly settings: SolverSettings
}

/** One wish that limits a plan, and how it is let go. */
interface Limit {
  readonly words: string
  readonly without: (wishes: Wishes) => Wishes
  /** The least that would do where the others hold; undefined where it can only be let go. */
  readonly relaxed: (others: Wishes, question: Question) => Relaxation
}

/**
 * Which wishes cannot be kept together, where no plan keeps them all: of each clash as few as make it, found by
 * leaving out one after the other (deletion filter, Chinneck & Dravnieks 1991, ORSA J. Comput. 3:157, as recalled), and
 * the least by which each would have to give where the others of its clash stay. Nothing where no wish is to blame.
 */
export function clashes(question: Question): readonly Clash[] {
  const found: Clash[] = []
  let wishes = question.wishes
  while (!keepable(wishes, question)) {
    const limits = fewest(wishes, question)
    const [first] = limits
    if (first === undefined) return found
    const alone = limitsOf(wishes)
      .filter(({ words }) => !limits.some((limit) => limit.words === words))
      .reduce((left, { without }) => without(left), wishes)
    found.push({
      limits: limits.map(({ words }) => words),
      relaxations: limits.map(({ without, relaxed }) => relaxed(without(alone), question)),
    })
    wishes = first.without(wishes)
  }
  return found
}

/** A clash as an issue. */
export function issueOf({ limits, relaxations }: Clash): PlanIssue {
  const ways = relaxations.map(({ words }) => words).join(', or ')
  return {
    code: 'limits clash',
    where: 'What you ask for',
    got: `cannot be had together: ${limits.join('; ')}`,
    accepted: 'wishes that one crew can keep',
    next: `${ways.charAt(0).toUpperCase()}${ways.slice(1)}.`,
  }
}

const keepable = (wishes: Wishes, { made, solver, settings }: Question): boolean =>
  solver(forLeast(made(wishes).programme, []), settings).status !== 'infeasible'

function fewest(wishes: Wishes, question: Question): readonly Limit[] {
  let needed = limitsOf(wishes)
  let left = wishes
  for (const limit of limitsOf(wishes)) {
    const fewer = limit.without(left)
    if (keepable(fewer, question)) continue
    left = fewer
    needed = needed.filter(({ words }) => words !== limit.words)
  }
  return keepable(
    needed.reduce((rest, { without }) => without(rest), left),
    question,
  )
    ? needed
    : []
}

/** The same limits, with another sum to be made small. */
const forLeast = ({ columns, rows }: Programme, terms: Row['terms']): Programme => {
  const cost = new Map(terms)
  return { rows, columns: columns.map((column, c) => ({ ...column, cost: cost.get(c) ?? 0 })) }
}

/** The least of a sum of columns that lets the others hold. */
function least(
  others: Wishes,
  terms: (made: CrewProgramme) => Row['terms'],
  { made, solver, settings }: Question,
): number {
  const programme = made(others)
  const solved = solver(forLeast(programme.programme, terms(programme)), settings)
  return solved.status === 'solved' ? solved.cost : Number.POSITIVE_INFINITY
}

function limitsOf(wishes: Wishes): readonly Limit[] {
  const { budget_usd, byHandMost_g_week, mostOfOne, liked = [], keep } = wishes
  return [
    ...(budget_usd === undefined
      ? []
      : [
          numeric(
            'budget_usd',
            `a budget of ${budget_usd} US$`,
            (to) => `raise the budget to ${to} US$`,
            budget_usd,
            (others, question) =>
              Math.ceil(least(others, ({ numbers }) => spending(numbers, question.facts), question)),
          ),
        ]),
    ...(byHandMost_g_week === undefined
      ? []
      : [
          numeric(
            'byHandMost_g_week',
            `at most ${byHandMost_g_week} g a week by hand`,
            (to) => `take out ${to} g a week by hand`,
            byHandMost_g_week,
            (others, question) =>
              Math.ceil(10 * least(others, ({ byHand }) => handling(byHand), question)) / 10,
          ),
        ]),
    ...(mostOfOne === undefined
      ? []
      : [
          numeric(
            'mostOfOne',
            `at most ${mostOfOne} of one kind`,
            (to) => `allow ${to} of one kind`,
            mostOfOne,
            (others, question) => fewestOfOne(mostOfOne, others, question),
          ),
        ]),
    ...liked.map((name) =>
      letGo(`at least one ${plain(name)}`, `do without ${plain(name)}`, (all) => ({
        ...all,
        liked: (all.liked ?? []).filter((one) => one !== name),
      })),
    ),
    ...(keep === undefined || keep.length === 0
      ? []
      : [
          letGo(
            keep === 'all' ? 'whoever is there stays' : `${keep.map(plain).join(', ')} there stay`,
            'give some of those there away',
            ({ keep: _keep, ...all }) => all,
          ),
        ]),
  ]
}

const plain = (name: string): string => name.replaceAll('_', ' ')

function numeric(
  key: 'budget_usd' | 'byHandMost_g_week' | 'mostOfOne',
  words: string,
  says: (to: number) => string,
  from: number,
  enough: (others: Wishes, question: Question) => number,
): Limit {
  return {
    words,
    without: ({ [key]: _gone, ...all }) => all,
    relaxed: (others, question) => {
      const to = enough(others, question)
      return { limit: words, from, to, words: says(to) }
    },
  }
}

const letGo = (words: string, says: string, without: Limit['without']): Limit => ({
  words,
  without,
  relaxed: () => ({ limit: words, words: says }),
})

/** The smallest number of one kind with which the others hold, doubled until it does and then halved in. */
function fewestOfOne(from: number, others: Wishes, question: Question): number {
  const holds = (mostOfOne: number): boolean => keepable({ ...others, mostOfOne }, question)
  let [low, high] = [from, Math.max(1, 2 * from)]
  while (!holds(high)) [low, high] = [high, 2 * high]
  while (high - low > 1) {
    const middle = Math.floor((low + high) / 2)
    if (holds(middle)) high = middle
    else low = middle
  }
  return high
}
