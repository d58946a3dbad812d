/** `npm start`: installs and builds what is missing, then runs the server, which opens the browser. */
import { built } from './build.mjs'
import { becomeChild } from './child.mjs'
import { prepare } from './prepare.mjs'
import { presentPrograms } from './programs.mjs'

prepare()
if (!(await built())) {
  process.exitCode = 1
} else if ('server' in presentPrograms()) {
  becomeChild(['dist/server.mjs', ...process.argv.slice(2)])
} else {
  console.error('There is no server to start yet: apps/server/src/main.ts is missing.')
  process.exitCode = 1
}
