/**
 * Shortest of several timings of one call, ms, after a call that nobody times: on a machine that does other
 * things too the shortest is what the call takes.
 */
export function least(call: () => unknown, times: number): number {
  call()
  return Math.min(
    ...Array.from({ length: times }, () => {
      const began = performance.now()
      call()
      return performance.now() - began
    }),
  )
}
