/**
 * What no file of the project may be or say: a source file of more than 400 lines, and a path that
 * exists on one machine only or lies beside the project instead of in it.
 */
import { readFileSync } from 'node:fs'
import { posix } from 'node:path'
import { runAlone } from './report.mjs'
import { filesUnder, isSource } from './sources.mjs'

const mostLines = 400

/** A file that a program made says so in its first line; nobody reads it from end to end. */
const made = /^\/\/ Made from /

/** Files of these endings are read as text. */
const text = /(\.(ts|tsx|mjs|js|json|md|css|html|yml|yaml|csv|svg|txt)|(^|\/)(LICENSE|run|\.[a-z]+))$/

/** Home folders and the like. */
const ofOneMachine = [/(?<![\w.])\/(home|root|work|Users)\/[\w.-]+/, /\b[A-Za-z]:\\+Users\\+\w+/]

/** A path that climbs before it goes down. */
const climbing = /(?:\.\.\/)+[\w-]+/g

/**
 * @param {string} path
 * @param {string} content
 * @returns {string[]}
 */
export function textIssues(path, content) {
  const lines = content.split('\n')
  const long =
    isSource(path) && !made.test(content) && lines.length - 1 > mostLines
      ? [
          `${path}: has ${lines.length - 1} lines; a source file has ${mostLines} at most. Split it by what it holds.`,
        ]
      : []
  const said = lines.flatMap((line, at) => [
    ...ofOneMachine
      .flatMap((pattern) => line.match(pattern)?.[0] ?? [])
      .map((found) => `${path}:${at + 1}: '${found}' is a path of one machine.`),
    ...(line.match(climbing) ?? [])
      .filter((found) => isBesideProject(posix.join(posix.dirname(path), found)))
      .map(
        (found) =>
          `${path}:${at + 1}: '${found}' lies beside the project, which carries its own copy of what it uses.`,
      ),
  ])
  return [...long, ...said]
}

/** @param {string} target relative to the root; the project has no folder `shared` at its root */
function isBesideProject(target) {
  return target.startsWith('../') || target === 'shared'
}

runAlone(import.meta.url, () =>
  filesUnder('.')
    .filter((path) => text.test(path) && path !== 'package-lock.json')
    .flatMap((path) => textIssues(path, readFileSync(path, 'utf8'))),
)
