/**
 * package-lock.json serves every machine: it names no registry's host, has the native parts of every
 * platform we run on (npm is known to drop those of other platforms), a checksum for each package,
 * and no install script that nobody has looked at.
 */
import { existsSync, readFileSync } from 'node:fs'
import { runAlone } from './report.mjs'
import { manifestOf, packageFolders } from './sources.mjs'

/**
 * @typedef {object} LockedPackage
 * @property {string} [version]
 * @property {string} [resolved]
 * @property {string} [integrity]
 * @property {boolean} [link]
 * @property {boolean} [hasInstallScript]
 * @property {string[]} [os]
 * @property {string[]} [cpu]
 * @property {Record<string, string>} [dependencies]
 * @property {Record<string, string>} [devDependencies]
 * @property {Record<string, string>} [optionalDependencies]
 */

/** @typedef {{ packages: Record<string, LockedPackage> }} Lockfile */

const platforms = [
  { os: 'darwin', cpu: 'arm64' },
  { os: 'linux', cpu: 'x64' },
  { os: 'win32', cpu: 'x64' },
]

/** Packages that run a script when installed, each with the reason why it may. @type {Readonly<Record<string, string>>} */
const mayRunScript = {
  fsevents: 'macOS only, brings its binary along; Vite uses it to watch files',
}

const registry = 'https://registry.npmjs.org/'

/**
 * @param {Lockfile} lockfile
 * @param {Readonly<Record<string, string>>} [scripts] who may run a script, and why
 * @returns {string[]}
 */
export function lockfileIssues({ packages }, scripts = mayRunScript) {
  return Object.entries(packages)
    .filter(([path]) => path.includes('node_modules/'))
    .flatMap(([path, locked]) => [
      ...sourceIssues(path, locked),
      ...platformIssues(path, locked, packages),
      ...(locked.hasInstallScript && !(nameOf(path) in scripts)
        ? [
            `${path}: runs a script when installed. Look at it, then name it with a reason in scripts/checks/lockfile.mjs, or do without it.`,
          ]
        : []),
    ])
}

/**
 * @param {string} path
 * @param {LockedPackage} locked
 */
function sourceIssues(path, { resolved, integrity, link }) {
  if (link) return []
  const foreign = resolved !== undefined && !resolved.startsWith(registry)
  return [
    ...(foreign
      ? [`${path}: comes from ${resolved}. Only packages of the npm registry, without its address.`]
      : []),
    ...(integrity === undefined ? [`${path}: has no checksum (integrity).`] : []),
  ]
}

/**
 * @param {string} path
 * @param {LockedPackage} locked
 * @param {Lockfile['packages']} packages
 */
function platformIssues(path, { optionalDependencies = {} }, packages) {
  const names = Object.keys(optionalDependencies)
  const parts = names.map((name) => ({
    name,
    part: packages[`${path}/node_modules/${name}`] ?? packages[`node_modules/${name}`],
  }))
  const missing = parts
    .filter(({ part }) => part === undefined)
    .map(
      ({ name }) =>
        `${path}: its optional part ${name} is not in the lockfile. Delete node_modules and package-lock.json and install anew.`,
    )

  const native = parts.filter(({ part }) => part?.os !== undefined || part?.cpu !== undefined)
  if (names.length < 2 || native.length === 0) return missing
  const uncovered = platforms.filter(
    ({ os, cpu }) => !native.some(({ part }) => part?.os?.includes(os) && part.cpu?.includes(cpu)),
  )
  return [...missing, ...uncovered.map(({ os, cpu }) => `${path}: has no part for ${os}-${cpu}.`)]
}

/** @param {string} path */
function nameOf(path) {
  return path.slice(path.lastIndexOf('node_modules/') + 'node_modules/'.length)
}

/**
 * Where the lockfile was made for other package.json files than those that are there: `npm ci` refuses
 * that, so a fresh clone would not install.
 *
 * @param {Lockfile} lockfile
 * @param {Readonly<Record<string, import('./sources.mjs').Manifest>>} manifests by folder, '' for the root
 * @returns {string[]}
 */
export function outOfStep({ packages }, manifests) {
  const asks = (/** @type {import('./sources.mjs').Manifest | undefined} */ of) =>
    JSON.stringify([of?.dependencies, of?.devDependencies].map((group) => Object.entries(group ?? {}).sort()))
  return Object.entries(manifests)
    .filter(([folder, manifest]) => asks(manifest) !== asks(packages[folder]))
    .map(
      ([folder]) => `package-lock.json: does not know what ${folder}/package.json asks for. Run npm install.`,
    )
}

runAlone(import.meta.url, () => {
  /** @type {Lockfile} */
  const lockfile = JSON.parse(readFileSync('package-lock.json', 'utf8'))
  const folders = ['', ...packageFolders('.').filter((folder) => existsSync(`${folder}/package.json`))]
  const manifests = Object.fromEntries(folders.map((folder) => [folder, manifestOf('.', folder)]))
  return [...lockfileIssues(lockfile), ...outOfStep(lockfile, manifests)]
})
