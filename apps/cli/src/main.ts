import { issueInWords, Refused } from '@holdfast/logbook'
import { CommanderError } from 'commander'
import { program } from './program.ts'
import { processTerminal } from './terminal.ts'

// A reader that has seen enough, such as `head`, closes the pipe: no failure of ours.
process.stdout.on('error', (error: NodeJS.ErrnoException) => {
  process.exit(error.code === 'EPIPE' ? 0 : 1)
})

const terminal = processTerminal()
const end = (code: number): void => {
  process.exitCode = code
}

program(terminal, end)
  .parseAsync()
  .catch((error: unknown) => {
    if (error instanceof CommanderError) return end(error.exitCode)
    if (error instanceof Refused) terminal.err(`${error.issues.map(issueInWords).join('\n')}\n`)
    // The cause is for whoever mends the program, in one line.
    else terminal.err(`Holdfast failed: ${error instanceof Error ? error.message : error}\n`)
    end(1)
  })
