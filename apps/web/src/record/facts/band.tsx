import type { Range } from '@holdfast/facts'

/** Powers of ten to either side of the middle. */
const decades = 2
const ticks = [-2, -1, 0, 1, 2]
const [wide, high] = [200, 28]
const edge = 6

/**
 * Low, typical and high as a bar with a mark: all on one scale, the middle of which is the typical value
 * and each tick ten times the last, so that a wide band looks wide. A band without a ratio (it is signed,
 * or typically zero) fills the scale.
 */
export function Band({ low, typical, high: top }: Range) {
  const hasRatio = typical > 0 && low >= 0
  const at = (value: number): number => {
    const tens = hasRatio
      ? value > 0
        ? Math.log10(value / typical)
        : -decades
      : value < typical
        ? -decades
        : decades
    return wide / 2 + (Math.min(decades, Math.max(-decades, tens)) / decades) * (wide / 2 - edge)
  }
  const [left, right] = [at(low), at(top)]
  return (
    <svg class="fact-band" viewBox={`0 0 ${wide} ${high}`} aria-hidden="true">
      <line class="scale" x1={edge} x2={wide - edge} y1={22} y2={22} />
      {ticks.map((tick) => {
        const x = wide / 2 + (tick / decades) * (wide / 2 - edge)
        return <line class="scale" key={tick} x1={x} x2={x} y1={19} y2={25} />
      })}
      {low < top && <rect class="spread" x={left} width={Math.max(1, right - left)} y={8} height={8} />}
      <line class="middle" x1={wide / 2} x2={wide / 2} y1={3} y2={21} />
    </svg>
  )
}
