import { createHash } from 'node:crypto'
import { existsSync, mkdirSync, readFileSync, statSync, writeFileSync } from 'node:fs'
import { join } from 'node:path'
import { filesUnder } from './checks/sources.mjs'
import { root } from './root.mjs'

const folder = join(root, '.build')

/**
 * What a build is made from, as one short text: it changes when a file comes, goes, grows or is
 * written. Tests are left out, since no build holds them.
 *
 * @param {readonly string[]} folders what the build reads, relative to the project
 * @param {string} [project]
 * @returns {string}
 */
export function stampOf(folders, project = root) {
  const configuration = ['package-lock.json', 'vite.shared.ts', 'vite.node.config.ts', 'scripts/programs.mjs']
  const sources = folders.flatMap((name) =>
    existsSync(join(project, name)) ? filesUnder(project, name) : [],
  )
  const hash = createHash('sha256').update(process.versions.node)
  for (const path of [...configuration, ...sources.filter((name) => !name.includes('.test.')).sort()]) {
    const { mtimeMs, size } = statSync(join(project, path))
    hash.update(`${path}\0${mtimeMs}\0${size}\n`)
  }
  return hash.digest('hex')
}

/** @param {string} build @returns {string | undefined} the stamp of its last success */
export function lastStamp(build) {
  const path = join(folder, `${build}.stamp`)
  return existsSync(path) ? readFileSync(path, 'utf8') : undefined
}

/** @param {string} build @param {string} stamp */
export function keepStamp(build, stamp) {
  mkdirSync(folder, { recursive: true })
  writeFileSync(join(folder, `${build}.stamp`), stamp)
}
