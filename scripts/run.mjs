/**
 * `node scripts/run.mjs NAME ...`: builds what is stale, then runs the program dist/NAME.mjs in the
 * folder where the command was given, with the rest of the arguments.
 */
import { join } from 'node:path'
import { built } from './build.mjs'
import { becomeChild } from './child.mjs'
import { prepare } from './prepare.mjs'
import { presentPrograms } from './programs.mjs'
import { root } from './root.mjs'

/** Programs that open the web app; the others need not wait for its build. */
const showsPages = ['server', 'screenshots']

const [name, ...rest] = process.argv.slice(2)
const calledFrom = process.env.INIT_CWD ?? process.cwd()

prepare()
const known = Object.keys(presentPrograms())
if (!known.includes(name)) {
  console.error(`There is no program "${name ?? ''}". There are: ${known.join(', ') || 'none yet'}.`)
  process.exitCode = 1
} else if (await built({ webToo: showsPages.includes(name) })) {
  process.chdir(calledFrom)
  becomeChild([join(root, 'dist', `${name}.mjs`), ...rest])
} else {
  process.exitCode = 1
}
