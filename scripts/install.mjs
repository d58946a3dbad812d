/**
 * Installs the packages of package-lock.json when they are not there or the lock has changed since.
 * npm is a JavaScript program, started with this very Node: a shell or a .cmd file is never needed.
 */
import { spawnSync } from 'node:child_process'
import { existsSync, readFileSync, realpathSync } from 'node:fs'
import { dirname, join } from 'node:path'
import { root } from './root.mjs'

/** @typedef {{ packages: Record<string, { version?: string, optional?: boolean }> }} Lock */

/**
 * npm's own file: the npm that started us, else the one that came with this Node (beside node.exe on
 * Windows, under ../lib elsewhere), else what the `npm` beside node links to.
 *
 * @param {string | undefined} startedBy npm_execpath, set by `npm start` and the like
 * @param {string} node the path of the running Node
 * @param {(path: string) => boolean} exists
 */
export function npmEntry(startedBy, node, exists = existsSync) {
  const beside = dirname(node)
  const linked = join(beside, 'npm')
  const places = [
    startedBy !== undefined && /npm-cli\.c?js$/.test(startedBy) ? startedBy : undefined,
    join(beside, 'node_modules', 'npm', 'bin', 'npm-cli.js'),
    join(beside, '..', 'lib', 'node_modules', 'npm', 'bin', 'npm-cli.js'),
    join(beside, '..', 'share', 'nodejs', 'npm', 'bin', 'npm-cli.js'),
  ]
  const found = places.find((place) => place !== undefined && exists(place))
  if (found !== undefined) return found
  if (!exists(linked)) return undefined
  const target = realpathSync(linked)
  return target.endsWith('.js') ? target : undefined
}

/**
 * Whether what npm says it installed is what the lock asks for. A package for another platform is not
 * installed, and is not missed. Packages of the workspaces are links and have no version of their own.
 *
 * @param {Lock} wanted package-lock.json
 * @param {Lock} have node_modules/.package-lock.json, which npm writes when an install is complete
 */
export function installed(wanted, have) {
  return Object.entries(wanted.packages).every(([path, { version, optional }]) => {
    if (!path.includes('node_modules/')) return true
    const there = have.packages[path]
    return there === undefined ? optional === true : there.version === version
  })
}

export function installIfNeeded() {
  const have = join(root, 'node_modules', '.package-lock.json')
  if (existsSync(have) && installed(readLock(join(root, 'package-lock.json')), readLock(have))) return

  const npm = npmEntry(process.env.npm_execpath, process.execPath)
  if (npm === undefined) {
    console.error(
      `No npm found beside ${process.execPath}. Run "npm ci" in ${root}, then this command again.`,
    )
    process.exit(1)
  }
  console.log('Installing the packages of package-lock.json ...')
  const run = spawnSync(process.execPath, [npm, 'ci', '--no-audit', '--no-fund'], {
    cwd: root,
    stdio: 'inherit',
  })
  if (run.status === 0) return
  console.error('The packages could not be installed; what npm says is above.')
  process.exit(run.status ?? 1)
}

/**
 * @param {string} path
 * @returns {Lock}
 */
function readLock(path) {
  return JSON.parse(readFileSync(path, 'utf8'))
}
