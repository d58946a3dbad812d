/**
 * Builds the web app and the programs for Node, each only when its sources have changed since the
 * last time or its result is gone. `node scripts/build.mjs` is `npm run build`.
 */
import { existsSync, readdirSync, rmSync } from 'node:fs'
import { join } from 'node:path'
import { prepare } from './prepare.mjs'
import { hasWebApp, presentPrograms } from './programs.mjs'
import { root } from './root.mjs'
import { keepStamp, lastStamp, stampOf } from './stamp.mjs'
import { startedAs } from './started-as.mjs'

const programFolders = ['packages', 'apps', 'validation', 'bench', 'examples']
const webFolders = ['packages', 'apps/web']

/** @param {'what is stale' | 'everything'} which */
async function buildPrograms(which) {
  const names = Object.keys(presentPrograms())
  const results = names.map((name) => join(root, 'dist', `${name}.mjs`))
  const stamp = stampOf(programFolders)
  const fresh = lastStamp('programs') === stamp && results.every((path) => existsSync(path))
  if (names.length === 0 || (fresh && which !== 'everything')) return

  console.error(`Building ${names.join(', ')} ...`)
  const { build: viteBuild } = await import('vite')
  const result = await viteBuild({ configFile: join(root, 'vite.node.config.ts'), logLevel: 'warn' })
  const outputs = (Array.isArray(result) ? result : [result]).flatMap((part) =>
    'output' in part ? part.output : [],
  )
  dropOldChunks(outputs.map(({ fileName }) => fileName))
  keepStamp('programs', stamp)
}

/**
 * Names of chunks carry a hash, so each build leaves its own; those of the build before go when the
 * new ones are there.
 *
 * @param {readonly string[]} built file names relative to dist
 */
function dropOldChunks(built) {
  const chunks = join(root, 'dist', 'chunks')
  if (!existsSync(chunks)) return
  for (const name of readdirSync(chunks)) {
    if (!built.includes(`chunks/${name.replace(/\.map$/, '')}`)) rmSync(join(chunks, name))
  }
}

/**
 * The page alone.
 *
 * @param {'what is stale' | 'everything'} which
 */
export async function buildWeb(which) {
  if (!hasWebApp()) return
  const stamp = stampOf(webFolders)
  const fresh = lastStamp('web') === stamp && existsSync(join(root, 'dist', 'web', 'index.html'))
  if (fresh && which !== 'everything') return

  console.error('Building the web app ...')
  const { build: viteBuild } = await import('vite')
  await viteBuild({ configFile: join(root, 'apps', 'web', 'vite.config.ts'), logLevel: 'warn' })
  keepStamp('web', stamp)
}

/**
 * Builds, and when the sources do not build says so plainly.
 *
 * @param {{ which?: 'what is stale' | 'everything', webToo?: boolean }} [wanted]
 * @returns {Promise<boolean>} whether all that was wanted is built
 */
export async function built({ which = 'what is stale', webToo = true } = {}) {
  try {
    await buildPrograms(which)
    if (webToo) await buildWeb(which)
    return true
  } catch (error) {
    console.error(`The build failed. ${error instanceof Error ? error.message : error}`)
    return false
  }
}

if (startedAs(import.meta.url)) {
  prepare()
  process.exitCode = (await built({ which: 'everything' })) ? 0 : 1
}
