#!/usr/bin/env node
/** The command `holdfast`, for those who link this folder with `npm link`. */
process.argv.splice(2, 0, 'holdfast')
await import('./run.mjs')
