/**
 * `npm run bench`: every part below, one after the other; `npm run bench -- start` one of them. Ratios
 * are to be compared between machines and versions; seconds are not.
 */
import { isMainThread, parentPort } from 'node:worker_threads'

const parts: Readonly<Record<string, () => Promise<unknown>>> = {
  year: () => import('./year.ts').then(({ yearBench }) => yearBench()),
  ensemble: () => import('./ensemble.ts').then(({ ensembleBench }) => ensembleBench(option('members', 500))),
  browser: () =>
    import('./browser/browser.ts').then(({ browserBench }) => browserBench(option('members', 500))),
  lever: () => import('./lever.ts').then(({ leverBench }) => leverBench()),
  crew: () => import('./crew.ts').then(({ crewBench }) => crewBench()),
  growth: () => import('./growth.ts').then(({ growthBench }) => growthBench()),
  integrators: () => import('./integrators.ts').then(({ integratorsBench }) => integratorsBench()),
  record: () => import('./record.ts').then(({ recordBench }) => recordBench()),
  start: () => import('./start.ts').then(({ startBench }) => startBench(option('minutes', 0.5))),
}

/** `--minutes 10`: how long the server idles before its memory is read; `--members 100`: of the ensemble. */
function option(name: string, usual: number): number {
  const at = process.argv.indexOf(`--${name}`)
  const asked = at < 0 ? usual : Number(process.argv[at + 1])
  if (!(asked >= 0)) throw new Error(`--${name}: "${process.argv[at + 1]}" is no number. Give 0 or more.`)
  return asked
}

async function main(): Promise<void> {
  const [asked] = process.argv.slice(2).filter((argument) => argument in parts)
  for (const [name, run] of Object.entries(parts)) {
    if (asked !== undefined && asked !== name) continue
    console.log(`\n${name}\n${'-'.repeat(name.length)}`)
    await run()
  }
}

/** A worker of the ensemble: it keeps the assembled model, and runs the members it is told. */
async function work(): Promise<void> {
  const { runShare } = await import('./share.ts')
  const { benchmarkRun } = await import('./benchmark-system.ts')
  const run = benchmarkRun(90)
  parentPort?.on('message', (share) => {
    runShare(run, share)
    parentPort?.postMessage('done')
  })
}

await (isMainThread ? main() : work())
