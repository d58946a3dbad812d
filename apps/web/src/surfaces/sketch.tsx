/** The box in which growths are drawn; the rock is a line at `floor`. */
export const width = 72
export const height = 28
export const floor = height - 2

/** A growth drawn in one line, as it grips the rock. Its name stands beside it. */
export function Sketch({ path }: { readonly path: string }) {
  return (
    <svg class="tuft" viewBox={`0 0 ${width} ${height}`} width={width} height={height} aria-hidden="true">
      <path d={`M0 ${floor}H${width}`} class="floor" />
      <path d={path} />
    </svg>
  )
}
