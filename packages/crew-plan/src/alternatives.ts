import { crewProgramme, type Learnt } from './crew-programme.ts'
import { withoutIdle } from './idle.ts'
import { learntFrom } from './lessons.ts'
import type { Solver, SolverSettings } from './solver.ts'
import { type Setting, type Tried, tried } from './tried.ts'

/** So many are told. */
const most = 2
/** So many crews are tried for them. */
const tries = 3
/** An alternative costs at most so much more, as a share. */
const dearer = 0.1
/** Of what a crew eats, by appetite, another may leave at most this share to the same animals. */
const alike = 0.5

const comersOf = ({ crew }: Tried): string =>
  crew.numbers.flatMap(({ animal, come }) => (come > 0 ? [animal.taxon] : [])).join()

/**
 * The tried crew, and others that hold, cost hardly more and eat by other mouths; the cheapest first. A plan that
 * became smaller round by round may be dearer than one of them.
 *
 * @param cost  of the best one before those were left out that were idle in it, US dollars
 */
export function withAlternatives(
  best: Tried,
  cost: number,
  setting: Setting,
  learnt: Learnt,
  solver: Solver,
  settings: SolverSettings,
  cancelled: () => boolean,
): readonly [Tried, ...Tried[]] {
  const known = [best]
  let fed = learnt.fed
  for (let one = 0; one < tries && known.length <= most && !cancelled(); one++) {
    const made = crewProgramme({ ...setting, learnt: { ...learnt, closed: false, fed } })
    const { programme, numbers, offset } = made
    programme.atMost(
      'cost',
      programme.columns.map(({ cost }, column) => [column, cost] as const),
      (1 + dearer) * cost - offset,
    )
    for (const { crew } of known) {
      const eats = crew.numbers
        .filter(({ come }) => come > 0)
        .map(({ animal, come }) => ({ taxon: animal.taxon, each: animal.consumption.typical, come }))
      const all = eats.reduce((sum, { each, come }) => sum + each * come, 0)
      const again = numbers.flatMap(({ animal, come }) => {
        const same = eats.find(({ taxon }) => taxon === animal.taxon)
        return same ? [[come, same.each] as const] : []
      })
      programme.atMost('alike', again, alike * all)
    }
    const solved = solver(programme, settings)
    if (solved.status !== 'solved') break
    // Where nobody comes there is nobody to do it otherwise.
    if (numbers.every(({ come }) => solved.values[come] === 0)) break
    const other = tried(setting, made, solved, learnt)
    fed = learntFrom({ ...learnt, fed }, other, false, []).fed
    if (other.issues.length > 0) continue
    const lean = withoutIdle(other, made, setting)
    if (known.every((one) => comersOf(one) !== comersOf(lean))) known.push(lean)
  }
  const [first, ...others] = [...known].sort((a, b) => a.cost - b.cost)
  return [first, ...others.filter(({ cost }) => cost <= (1 + dearer) * first.cost)]
}
