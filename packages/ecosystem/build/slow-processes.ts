import type { Process } from '../src/declare/index.ts'

/** The processes that are declared slow, and those that read what these sum up. */
export function slowProcesses(processes: readonly Process[]): ReadonlySet<Process> {
  const slow = new Set(processes.filter((declaration) => declaration.slow))
  const readsSlowSums = (declaration: Process): boolean =>
    Object.values(declaration.reads).some(
      (read) =>
        read.read === 'gathered' && [...slow].some(({ gathers }) => gathers && read.gather in gathers),
    )
  for (let before = -1; before < slow.size; ) {
    before = slow.size
    for (const declaration of processes) if (readsSlowSums(declaration)) slow.add(declaration)
  }
  return slow
}
