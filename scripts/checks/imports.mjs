/**
 * Imports point one way, stay in their package, are declared, and go in no circle. `importIssues`
 * gives one line for each that does not.
 */
import { readFileSync } from 'node:fs'
import { join, posix } from 'node:path'
import { cycles } from './cycles.mjs'
import { hasPlace, mayTake, pure } from './order.mjs'
import { references } from './references.mjs'
import { runAlone } from './report.mjs'
import { declared, filesUnder, isForDevelopers, isSource, manifestOf, packageFolders } from './sources.mjs'

const scope = '@holdfast/'

/**
 * @param {string} root a tree with packages/ and apps/
 * @returns {string[]}
 */
export function importIssues(root) {
  const ofDevelopers = declared(manifestOf(root, ''))
  return packageFolders(root).flatMap((folder) => {
    const manifest = manifestOf(root, folder)
    const own = [...declared(manifest), ...Object.keys(manifest.imports ?? {})]
    const sources = filesUnder(root, folder).filter(isSource)
    /** @type {Map<string, string[]>} */
    const edges = new Map()
    const issues = sources.flatMap((path) => {
      const found = references(path, readFileSync(join(root, path), 'utf8'))
      const known = isForDevelopers(path) ? [...own, ...ofDevelopers] : own
      const values = found.filter(({ specifier, types }) => isRelative(specifier) && !types)
      edges.set(
        path,
        values.map(({ specifier }) => target(path, specifier)),
      )
      return found.flatMap((reference) => {
        const complaint = complaintAbout(reference, { path, folder, known })
        return complaint === undefined ? [] : [`${path}:${reference.line}: ${complaint}`]
      })
    })
    const circles = cycles(edges).map((circle) => `${circle[0]}: imports itself: ${circle.join(' -> ')}`)
    return [...manifestIssues(folder, manifest), ...issues, ...circles]
  })
}

/** @param {string} folder @param {import('./sources.mjs').Manifest} manifest */
function manifestIssues(folder, manifest) {
  const place = hasPlace(folder)
    ? []
    : [`${folder}: has no place in the order of packages. Give it a row in scripts/checks/order.mjs.`]
  const upward = declared(manifest).filter(
    (name) => name.startsWith(scope) && mayTake(folder, name.slice(scope.length)) === 'nothing',
  )
  const targets = [...JSON.stringify(manifest.imports ?? {}).matchAll(/:"(?<target>[^"]+)"/g)]
  const outside = targets.flatMap(({ groups }) =>
    groups?.target.startsWith('./') ? [] : (groups?.target ?? []),
  )
  return [
    ...place,
    ...upward.map((name) => `${folder}/package.json: depends on ${name}, ${wrongWay(folder)}`),
    ...outside.map(
      (name) => `${folder}/package.json: "imports" names ${name}, which is no file of ${folder}.`,
    ),
  ]
}

/**
 * @param {import('./references.mjs').Reference} reference
 * @param {{ path: string, folder: string, known: readonly string[] }} from
 */
function complaintAbout({ specifier, types }, { path, folder, known }) {
  if (isRelative(specifier)) {
    const file = target(path, specifier)
    const configuration = isForDevelopers(path) && (!file.includes('/') || file.startsWith('scripts/'))
    if (configuration || file.startsWith(`${folder}/`)) return undefined
    return `'${specifier}' leaves ${folder}. Import the other package by its name.`
  }
  if (specifier.startsWith('virtual:')) return undefined
  if (specifier.startsWith('node:')) {
    const needless = pure.includes(folder.replace('packages/', '')) && !isForDevelopers(path)
    return needless ? `'${specifier}' is not for ${folder}, which also runs in a browser.` : undefined
  }
  const name = specifier.startsWith('#') ? specifier : packageName(specifier)
  if (name.startsWith(scope) && name !== manifestName(folder)) {
    const may = mayTake(folder, name.slice(scope.length))
    if (may === 'nothing') return `imports ${name}, ${wrongWay(folder)}`
    if (may === 'types' && !types) return `imports a value of ${name}; ${folder} may import its types only.`
  }
  if (name === manifestName(folder)) {
    return isForDevelopers(path) ? undefined : `imports its own package ${name}. Import the file instead.`
  }
  return known.includes(name) ? undefined : `imports ${name}, which ${folder}/package.json does not name.`
}

/** @param {string} folder */
function wrongWay(folder) {
  return `which does not stand below ${folder} in the order of packages (scripts/checks/order.mjs).`
}

/** @param {string} folder */
function manifestName(folder) {
  return scope + posix.basename(folder)
}

/** @param {string} specifier */
function packageName(specifier) {
  return specifier.split('/', specifier.startsWith('@') ? 2 : 1).join('/')
}

/** @param {string} specifier */
function isRelative(specifier) {
  return specifier.startsWith('.')
}

/** @param {string} path @param {string} specifier */
function target(path, specifier) {
  return posix.join(posix.dirname(path), specifier.replace(/\?.*$/, ''))
}

runAlone(import.meta.url, () => importIssues('.'))
