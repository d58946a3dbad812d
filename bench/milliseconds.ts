/** Middle of several timings of one call, ms, after two calls that nobody times. */
export function milliseconds(call: () => unknown, times: number): number {
  for (let warm = 0; warm < 2; warm++) call()
  const taken = Array.from({ length: times }, () => {
    const began = performance.now()
    call()
    return performance.now() - began
  })
  taken.sort((a, b) => a - b)
  return taken[Math.floor(times / 2)]
}
