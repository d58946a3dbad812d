import { readFileSync } from 'node:fs'
import { join } from 'node:path'
import { root } from './root.mjs'

/**
 * What to say to a Node that is too old, or nothing if it is new enough.
 *
 * @param {string} have such as '20.18.0'
 * @param {string} wanted an `engines` range of the form '>=20.19'
 */
export function nodeTooOld(have, wanted) {
  const least = wanted.replace('>=', '').split('.').map(Number)
  const parts = have.split('.').map(Number)
  const differs = least.findIndex((part, i) => part !== parts[i])
  if (differs === -1 || parts[differs] > least[differs]) return undefined
  return `Node.js ${have} is too old for Holdfast, which needs ${least.join('.')} or later. Install a current release from https://nodejs.org and run the command again.`
}

/** Ends the process with a plain word when this Node is older than `engines` of package.json says. */
export function demandNode() {
  /** @type {{ engines: { node: string } }} */
  const { engines } = JSON.parse(readFileSync(join(root, 'package.json'), 'utf8'))
  const complaint = nodeTooOld(process.versions.node, engines.node)
  if (complaint === undefined) return
  console.error(complaint)
  process.exit(1)
}
