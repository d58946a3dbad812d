/**
 * `npm run bench`: every part below, one after the other; `npm run bench -- start` one of them. Ratios
 * are to be compared between machines and versions; seconds are not.
 */
const parts: Readonly<Record<string, () => Promise<unknown>>> = {
  'model-year': () => import('./model-year.ts'),
  record: () => import('./record.ts').then(({ recordBench }) => recordBench()),
  start: () => import('./start.ts').then(({ startBench }) => startBench(minutesAsked())),
}

/** `--minutes 10`: how long the server idles before its memory is read. */
function minutesAsked(): number {
  const at = process.argv.indexOf('--minutes')
  const asked = at < 0 ? 0.5 : Number(process.argv[at + 1])
  if (!(asked >= 0)) throw new Error(`--minutes: "${process.argv[at + 1]}" is no number. Give 0 or more.`)
  return asked
}

const [asked] = process.argv.slice(2).filter((argument) => argument in parts)
for (const [name, run] of Object.entries(parts)) {
  if (asked !== undefined && asked !== name) continue
  console.log(`\n${name}\n${'-'.repeat(name.length)}`)
  await run()
}

export {}
