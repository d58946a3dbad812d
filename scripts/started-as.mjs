import { realpathSync } from 'node:fs'
import { fileURLToPath } from 'node:url'

/**
 * Whether a module is what Node was started with. Node follows links for `import.meta.url` and not for
 * its arguments, so both are followed here.
 *
 * @param {string} url `import.meta.url` of the module
 */
export function startedAs(url) {
  const started = process.argv[1]
  return started !== undefined && realpathSync(started) === realpathSync(fileURLToPath(url))
}
