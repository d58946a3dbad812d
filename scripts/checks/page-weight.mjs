/**
 * Weighs what a browser must fetch of script before a view is there, packed, by the build's own list of what
 * imports what. Fails where a first view is heavier than 300 kB or the log than 100 kB.
 */
import { readdirSync, readFileSync } from 'node:fs'
import { join } from 'node:path'
import { gzipSync } from 'node:zlib'
import { buildWeb } from '../build.mjs'
import { root } from '../root.mjs'
import { startedAs } from '../started-as.mjs'

/** @typedef {{ file: string, imports?: string[], isEntry?: boolean }} Chunk */

const kB = 1000

/**
 * The views by the parts that the page fetches for them, and what each may weigh. Workers count where a view
 * starts one.
 *
 * @type {Record<string, { parts: string[], worker?: RegExp, most: number }>}
 */
export const views = {
  today: { parts: ['src/today/index.tsx'], most: 300 * kB },
  water: { parts: ['src/water/index.tsx'], worker: /^holdfast\.worker-/, most: 300 * kB },
  'start-up': { parts: ['src/water/start/index.tsx'], worker: /^holdfast\.worker-/, most: 300 * kB },
  surfaces: { parts: ['src/surfaces/index.tsx'], worker: /^holdfast\.worker-/, most: 300 * kB },
  log: { parts: ['src/record/index.tsx'], most: 100 * kB },
  letter: { parts: ['src/record/index.tsx', 'src/record/letter/index.tsx'], most: 300 * kB },
  import: {
    parts: ['src/record/index.tsx', 'src/record/import/index.tsx'],
    worker: /^import\.worker-/,
    most: 300 * kB,
  },
  sums: { parts: ['src/record/index.tsx', 'src/record/sums/index.tsx'], most: 300 * kB },
  facts: { parts: ['src/record/index.tsx', 'src/record/facts/index.tsx'], most: 300 * kB },
}

/**
 * Files that stand behind parts of a page, each once.
 *
 * @param {Record<string, Chunk>} manifest  of the build
 * @param {readonly string[]} parts  keys of it
 */
export function filesBehind(manifest, parts) {
  /** @type {Set<string>} */
  const seen = new Set()
  const follow = (/** @type {string} */ key) => {
    const chunk = manifest[key]
    if (chunk === undefined) throw new Error(`The build has no part "${key}".`)
    if (seen.has(chunk.file)) return
    seen.add(chunk.file)
    for (const next of chunk.imports ?? []) follow(next)
  }
  for (const part of parts) follow(part)
  return [...seen].filter((file) => file.endsWith('.js'))
}

/**
 * @param {Record<string, number>} weights  of the views, bytes
 * @returns {string[]} a sentence for each that is too heavy
 */
export const tooHeavy = (weights) =>
  Object.entries(views).flatMap(([name, { most }]) => {
    const weight = weights[name] ?? Number.POSITIVE_INFINITY
    return weight <= most
      ? []
      : [`${name} weighs ${Math.round(weight / kB)} kB of script, packed. It may weigh ${most / kB} kB.`]
  })

/**
 * Bytes of packed script of each view, before it can show anything.
 *
 * @param {string} folder  of the built page
 * @returns {Record<string, number>}
 */
function weigh(folder) {
  /** @type {Record<string, Chunk>} */
  const manifest = JSON.parse(readFileSync(join(folder, '.vite', 'manifest.json'), 'utf8'))
  const workers = readdirSync(join(folder, 'assets')).filter((name) => name.endsWith('.js'))
  const packed = (/** @type {string} */ file) => gzipSync(readFileSync(join(folder, file))).length
  return Object.fromEntries(
    Object.entries(views).map(([name, { parts, worker }]) => {
      const files = [
        ...filesBehind(manifest, ['index.html', ...parts]),
        ...workers.filter((file) => worker?.test(file)).map((file) => `assets/${file}`),
      ]
      return [name, files.reduce((sum, file) => sum + packed(file), 0)]
    }),
  )
}

if (startedAs(import.meta.url)) {
  await buildWeb('what is stale')
  const weights = weigh(join(root, 'dist', 'web'))
  for (const [name, weight] of Object.entries(weights))
    console.log(`${name.padEnd(10)}${String(Math.round(weight / kB)).padStart(4)} kB of script, packed`)
  const issues = tooHeavy(weights)
  for (const issue of issues) console.error(issue)
  if (issues.length > 0) process.exitCode = 1
}
