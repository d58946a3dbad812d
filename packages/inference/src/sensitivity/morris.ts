import { uniform } from '../random.ts'

/** What a function of the unit cube gives at some points: for each point a list of results. */
export type Evaluate = (points: readonly (readonly number[])[]) => readonly (readonly number[])[]

/** How one input moves one result when it goes up by half of its range. */
export interface ElementaryEffect {
  /** Mean of the changes without their signs (Campolongo, Cariboni & Saltelli 2007, Environ Model Softw 22:1509). */
  readonly mean: number
  /** Spread of the changes: large where the effect depends on the other inputs, or bends. */
  readonly spread: number
}

/** Steps from these up by `half` and from there down stay inside the cube and away from its ends. */
const lower = [1 / 8, 3 / 8]
const half = 1 / 2

/**
 * Screens many inputs with few runs: walks through the unit cube that change one input after another
 * (Morris 1991, Technometrics 33:161, four levels; as recalled).
 *
 * @param walks  each takes one run more than there are inputs
 * @returns for each result the effect of each input
 */
export function morris(
  evaluate: Evaluate,
  inputs: number,
  walks: number,
  seed: number,
): readonly (readonly ElementaryEffect[])[] {
  const paths = Array.from({ length: walks }, (_, walk) => path(inputs, seed, walk))
  const results = evaluate(paths.flatMap(({ points }) => points))
  return results[0].map((_, which) =>
    Array.from({ length: inputs }, (_, input) =>
      effectOf(
        paths.map(({ order, up }, walk) => {
          const step = order.indexOf(input)
          const at = walk * (inputs + 1) + step
          const change = results[at + 1][which] - results[at][which]
          return up[input] ? change : -change
        }),
      ),
    ),
  )
}

interface Path {
  readonly points: readonly (readonly number[])[]
  /** Inputs in the order in which they change; whether each goes up. */
  readonly order: readonly number[]
  readonly up: readonly boolean[]
}

function path(inputs: number, seed: number, walk: number): Path {
  const draw = (input: number, what: string): number => uniform(seed, walk, `${what} of input ${input}`)
  const every = Array.from({ length: inputs }, (_, input) => input)
  const order = every
    .map((input) => [draw(input, 'turn'), input] as const)
    .sort(([a], [b]) => a - b)
    .map(([, input]) => input)
  const up = every.map((input) => draw(input, 'direction') < 0.5)
  const low = every.map((input) => lower[draw(input, 'level') < 0.5 ? 0 : 1])
  const point = low.map((level, input) => (up[input] ? level : level + half))
  const points = [[...point]]
  for (const input of order) {
    point[input] += up[input] ? half : -half
    points.push([...point])
  }
  return { points, order, up }
}

function effectOf(changes: readonly number[]): ElementaryEffect {
  const count = changes.length
  const middle = changes.reduce((sum, change) => sum + change, 0) / count
  const squares = changes.reduce((sum, change) => sum + (change - middle) * (change - middle), 0)
  return {
    mean: changes.reduce((sum, change) => sum + Math.abs(change), 0) / count,
    spread: count > 1 ? Math.sqrt(squares / (count - 1)) : 0,
  }
}
