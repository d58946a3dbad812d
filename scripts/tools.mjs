/**
 * Where an installed tool's own JavaScript file is. Tools are started as `node file`, never through
 * node_modules/.bin: there Windows has .cmd files that need a shell, and a shell needs quoting.
 */
import { readFileSync } from 'node:fs'
import { join } from 'node:path'
import { root } from './root.mjs'

/**
 * @param {string} packageName for example 'vitest'
 * @param {string} command the name in the package's `bin`
 */
export function toolEntry(packageName, command) {
  const folder = join(root, 'node_modules', packageName)
  /** @type {{ bin: string | Record<string, string> }} */
  const { bin } = JSON.parse(readFileSync(join(folder, 'package.json'), 'utf8'))
  return join(folder, typeof bin === 'string' ? bin : bin[command])
}
