import type { KnownAnimals } from '@holdfast/facts'
import type { PlanIssue } from './answer.ts'
import type { Judged } from './candidates.ts'
import { goesBy } from './crew-programme.ts'
import type { Wishes } from './question.ts'

export function unsolved(status: 'no answer in time' | 'cancelled'): PlanIssue {
  return {
    code: status,
    where: 'Plan',
    got: status === 'cancelled' ? 'was stopped' : 'was not found in time',
    accepted: '',
    next: 'Ask again with fewer animals on the list.',
  }
}

/** What is asked for and neither lives there nor may come, with what bars the first of it. */
export function notToBeHad(
  { liked = [] }: Wishes,
  there: readonly string[],
  { candidates, barred }: Judged,
  { grazer }: KnownAnimals,
): readonly PlanIssue[] {
  const may = [...there.flatMap((taxon) => grazer(taxon) ?? []), ...candidates.map(({ animal }) => animal)]
  return liked
    .filter((name) => !may.some((animal) => goesBy(animal, name)))
    .map((name) => {
      const bar = barred.find(({ taxon }) => {
        const animal = grazer(taxon)
        return animal && goesBy(animal, name)
      })
      return {
        code: 'not to be had',
        where: name,
        got: bar === undefined ? 'is no animal that is known here' : `is not to come: ${bar.why}`,
        accepted: 'a taxon or group that may live there',
        next: 'Take it off the list of those you like.',
      }
    })
}
