/** What every command does first, with nothing but Node: the right Node, and the packages installed. */
import { installIfNeeded } from './install.mjs'
import { demandNode } from './node-version.mjs'
import { root } from './root.mjs'

export function prepare() {
  process.chdir(root)
  demandNode()
  installIfNeeded()
}
