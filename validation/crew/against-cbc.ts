/** Optimal values of random crew programmes, tightened, beside those that CBC, a solver by others, finds of them as written down. */
import { spawnSync } from 'node:child_process'
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { loadSolver, lpText } from '@holdfast/crew-plan'
import { dice, instance } from '@holdfast/crew-plan/testing/drawn'
import type { Check } from '../check.ts'

const name = 'Crew programmes against CBC'
const instances = 50
const apart = 1e-4

export async function againstCbc(): Promise<readonly Check[]> {
  if (spawnSync('cbc', ['-quit']).error)
    return [{ name, outcome: 'skipped', says: 'cbc is not installed (coinor-cbc)' }]
  const solver = await loadSolver()
  const folder = mkdtempSync(join(tmpdir(), 'holdfast-crew-'))
  try {
    const misses: string[] = []
    let largest = 0
    for (let number = 1; number <= instances; number++) {
      const programme = drawn(number, false)
      const ours = solver(programme, { gap: 1e-6, seconds: 60 })
      const file = join(folder, 'crew.lp')
      writeFileSync(file, lpText(drawn(number, true)))
      const theirs = costOf(
        spawnSync('cbc', [file, 'ratioGap', '1e-7', 'sec', '120', 'solve', 'quit'], { encoding: 'utf8' })
          .stdout,
      )
      const difference =
        ours.status === 'solved' ? Math.abs(ours.cost - theirs) / Math.max(1, Math.abs(theirs)) : Number.NaN
      if (difference <= apart) largest = Math.max(largest, difference)
      else misses.push(`${number}: ${ours.status === 'solved' ? ours.cost : ours.status} and ${theirs}`)
    }
    const says =
      misses.length === 0
        ? `${instances} agree, at most ${largest.toExponential(1)} apart`
        : misses.join('; ')
    return [{ name, outcome: misses.length === 0 ? 'passed' : 'failed', says }]
  } finally {
    rmSync(folder, { recursive: true })
  }
}

/**
 * Programmes small enough for both to prove: some of the catalogue in a vessel of any size.
 *
 * @param loose  as it is written down, without what makes ours quicker to solve
 */
function drawn(number: number, loose: boolean) {
  const roll = dice(number)
  const also = roll() < 0.3 ? { bubble: 0.1 } : roll() < 0.5 ? { red_cotton: 0.2 } : {}
  return instance(
    { volume_L: 40 + 900 * roll() ** 2, also, lush: 0.3 + roll() },
    { withCaution: 'all' },
    () => roll() < 0.3,
    loose,
  ).crew.programme
}

/** What CBC says of the optimum; NaN where it says nothing. */
const costOf = (said: string): number => Number(/Objective value:\s+(\S+)/.exec(said)?.[1] ?? Number.NaN)
