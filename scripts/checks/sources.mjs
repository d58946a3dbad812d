import { existsSync, readdirSync, readFileSync } from 'node:fs'
import { join } from 'node:path'

const notOurs = new Set(['node_modules', 'dist', '.build', '.git', 'coverage'])

/**
 * Every file under a folder, without what is installed or built.
 *
 * @param {string} root
 * @param {string} [folder] relative to root, with forward slashes
 * @returns {string[]} paths relative to root, with forward slashes on every platform
 */
export function filesUnder(root, folder = '') {
  const entries = readdirSync(join(root, folder), { withFileTypes: true })
  return entries.flatMap((entry) => {
    const path = folder === '' ? entry.name : `${folder}/${entry.name}`
    if (entry.isDirectory()) return notOurs.has(entry.name) ? [] : filesUnder(root, path)
    return entry.isFile() ? [path] : []
  })
}

/** @param {string} path */
export function isSource(path) {
  return /\.(ts|tsx|mjs|js)$/.test(path)
}

/**
 * Tests, what tests share (testing/, conformance/, browser/), configuration of the tools, what runs when
 * the project is built (build/) or shown (screenshots/), and the folders that look at it from outside:
 * they run on a developer's machine, with Node, and are never shipped.
 *
 * @param {string} path
 */
export function isForDevelopers(path) {
  return [
    /\.(test|config)\.(ts|tsx|mjs)$/,
    /\/(testing|conformance|browser|build|screenshots)\//,
    /^(validation|bench|examples)\//,
  ].some((pattern) => pattern.test(path))
}

/**
 * @typedef {object} Manifest
 * @property {string} [name]
 * @property {Record<string, unknown>} [imports] short names of the package's own files: '#model'
 * @property {Record<string, string>} [dependencies]
 * @property {Record<string, string>} [devDependencies]
 * @property {Record<string, string>} [peerDependencies]
 * @property {Record<string, string>} [optionalDependencies]
 */

/**
 * @param {string} root
 * @param {string} folder
 * @returns {Manifest} an empty one for a folder that has none
 */
export function manifestOf(root, folder) {
  const path = join(root, folder, 'package.json')
  return existsSync(path) ? JSON.parse(readFileSync(path, 'utf8')) : {}
}

/** @param {Manifest} manifest */
export function declared(manifest) {
  const { dependencies, devDependencies, peerDependencies, optionalDependencies } = manifest
  return Object.keys({ ...dependencies, ...devDependencies, ...peerDependencies, ...optionalDependencies })
}

/** The folders that are packages: each of packages/ and apps/, and the three that look on from outside. @param {string} root */
export function packageFolders(root) {
  const inside = ['packages', 'apps'].flatMap((kind) => {
    if (!existsSync(join(root, kind))) return []
    const entries = readdirSync(join(root, kind), { withFileTypes: true })
    return entries.filter((entry) => entry.isDirectory()).map((entry) => `${kind}/${entry.name}`)
  })
  const outside = ['validation', 'bench', 'examples'].filter((folder) => existsSync(join(root, folder)))
  return [...inside, ...outside]
}
