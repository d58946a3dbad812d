import { plain } from '../../figure/numbers.ts'
import { amount } from '../../ways/amounts.ts'
import type { Holds } from './blank.ts'

const width = 300
const edge = 10

/** Where a value lies among what is usual: a line drawn while one types, and the same in words. */
export function Range({ holds, value }: { readonly holds: Holds; readonly value: number | undefined }) {
  const [low, high] = holds.usual
  const x = scale(low, high)
  const inWords = (of: number) => (holds.amount ? amount(holds.amount, of) : `${plain(of)} ${holds.unit}`)
  return (
    <span class="letter-range">
      <svg viewBox={`0 0 ${width} 20`} width={width} height={20} aria-hidden="true">
        <path d={`M0 10H${width}`} class="thin" />
        <path d={`M${x(low)} 10H${x(high)}`} class="usual" />
        {value !== undefined && <circle cx={x(value)} cy={10} r={6} class="here" />}
      </svg>
      <span>
        {where(value, low, high)}usual: {inWords(low)} to {inWords(high)}
      </span>
    </span>
  )
}

function where(value: number | undefined, low: number, high: number): string {
  if (value === undefined) return ''
  if (value < low) return 'less than most; '
  return value > high ? 'more than most; ' : ''
}

/** What is usual takes the middle; by tenfolds where it spans some, as most amounts do. */
function scale(low: number, high: number): (value: number) => number {
  const isWide = low > 0 && high / low > 5
  const of = (value: number) => (isWide ? Math.log(Math.max(value, low / 1000)) : value)
  const [from, to] = [of(low), of(high)]
  const room = (to - from) / 2
  return (value) => {
    const share = (of(value) - from + room) / (to - from + 2 * room)
    return Math.min(width - edge, Math.max(edge, share * width))
  }
}
