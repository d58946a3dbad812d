/**
 * Shortest of three timings of one call, ms of the processor and not of the clock: what is compared line by line is
 * not to depend on what else the machine does meanwhile.
 */
export function processorTime(call: () => unknown): number {
  const times = [0, 1, 2].map(() => {
    const before = process.cpuUsage()
    call()
    const { user, system } = process.cpuUsage(before)
    return (user + system) / 1000
  })
  return Math.min(...times)
}
