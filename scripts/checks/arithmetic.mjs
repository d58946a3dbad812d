/**
 * The language leaves `**` and most of Math to each engine's own rounding, so that a result could
 * differ between Node and a browser. Where the same bits are promised, those functions come from
 * @holdfast/elementary. Tests are free: they compare with Math.
 */
import { readFileSync } from 'node:fs'
import { join } from 'node:path'
import { Visitor } from 'vite'
import { sameBits } from './order.mjs'
import { lineAt, parse } from './references.mjs'
import { runAlone } from './report.mjs'
import { filesUnder, isForDevelopers, isSource, packageFolders } from './sources.mjs'

/** Exact by the standard: they pick, cut or change the sign of a number, or (sqrt, fround) round it correctly. */
const exactFunctions = [
  'abs',
  'ceil',
  'clz32',
  'floor',
  'fround',
  'imul',
  'max',
  'min',
  'round',
  'sign',
  'sqrt',
  'trunc',
]

/** One double each, the nearest to the number that the standard prints. */
const constants = ['E', 'LN10', 'LN2', 'LOG10E', 'LOG2E', 'PI', 'SQRT1_2', 'SQRT2']

const allowed = new Set([...exactFunctions, ...constants])

/**
 * @param {string} path
 * @param {string} text
 * @returns {string[]} one line for each use that an engine may round in its own way
 */
export function arithmeticIssues(path, text) {
  /** @type {string[]} */
  const issues = []
  /** @type {Set<number>} */
  const fine = new Set()
  /** @param {{ start: number }} node @param {string} what */
  const issue = (node, what) => {
    issues.push(`${path}:${lineAt(text, node.start)}: ${what}`)
  }
  new Visitor({
    MemberExpression({ object, property, computed }) {
      const exact = !computed && property.type === 'Identifier' && allowed.has(property.name)
      if (exact && object.type === 'Identifier') fine.add(object.start)
    },
    Identifier(node) {
      if (node.name !== 'Math' || fine.has(node.start)) return
      issue(
        node,
        `${text.slice(node.start).match(/^[\w.]+/)?.[0]} is rounded as each engine likes. Take it from @holdfast/elementary.`,
      )
    },
    BinaryExpression(node) {
      if (node.operator === '**')
        issue(node, '** is rounded as each engine likes. Multiply, or take power from @holdfast/elementary.')
    },
    AssignmentExpression(node) {
      if (node.operator === '**=')
        issue(node, '**= is rounded as each engine likes. Multiply, or take power from @holdfast/elementary.')
    },
  }).visit(parse(path, text))
  return issues
}

/** @param {string} root */
function issuesUnder(root) {
  const folders = packageFolders(root).filter((folder) =>
    sameBits.some((name) => folder === `packages/${name}`),
  )
  const paths = folders.flatMap((folder) => filesUnder(root, folder))
  return paths
    .filter((path) => isSource(path) && !isForDevelopers(path))
    .flatMap((path) => arithmeticIssues(path, readFileSync(join(root, path), 'utf8')))
}

runAlone(import.meta.url, () => issuesUnder('.'))
