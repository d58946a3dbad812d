import { counted } from '../../ways/counts.ts'
import { dayInShort } from '../../ways/dates.ts'

/** What became of an export that was brought back. */
export interface Taken {
  /** ISO instant */
  readonly madeAt: string
  readonly added: number
  readonly already: number
  /** Ids of entries that say something else here. */
  readonly differing: readonly string[]
  /** Files that were lost before the export was made. */
  readonly leftOut: readonly string[]
}

export function takenInWords({ madeAt, added, already, differing, leftOut }: Taken): string {
  const here = already > 0 ? `; ${entries(already)} in the log already` : ''
  return [
    `The copy of ${dayInShort(madeAt.slice(0, 10))} is in: ${entries(added)} new${here}.`,
    ...(differing.length > 0
      ? [
          `Of those, ${differing.length === 1 ? 'one says' : `${differing.length} say`} something else here; what was here stays.`,
        ]
      : []),
    ...(leftOut.length > 0 ? [`Before it was made, ${counted(leftOut.length, 'file')} had been lost.`] : []),
  ].join(' ')
}

const entries = (count: number) => counted(count, 'entry', 'entries')
