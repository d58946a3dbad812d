import { isMainThread } from 'node:worker_threads'
import { run } from './run.ts'
import { readInThread } from './sheet-reader.ts'
import { processTerminal } from './terminal.ts'

// A reader that has seen enough, such as `head`, closes the pipe: no failure of ours.
process.stdout.on('error', (error: NodeJS.ErrnoException) => {
  process.exit(error.code === 'EPIPE' ? 0 : 1)
})

// The program starts itself as the thread that reads a large sheet.
if (isMainThread) {
  run(process.argv.slice(2), processTerminal()).then((code) => {
    process.exitCode = code
  })
} else readInThread()
