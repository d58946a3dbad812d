import { issueInWords, Refused } from '@holdfast/logbook'
import { CommanderError } from 'commander'
import { program } from './program.ts'
import type { Terminal } from './terminal.ts'

/**
 * Runs one command.
 *
 * @param args  what stands after the name of the program
 * @returns the exit code
 */
export async function run(args: readonly string[], terminal: Terminal): Promise<number> {
  let code = 0
  const end = (said: number): void => {
    code = said
  }
  try {
    await program(terminal, end).parseAsync(args, { from: 'user' })
    return code
  } catch (error) {
    if (error instanceof CommanderError) return error.exitCode
    if (error instanceof Refused) terminal.err(`${error.issues.map(issueInWords).join('\n')}\n`)
    // The cause is for whoever mends the program, in one line.
    else terminal.err(`Holdfast failed: ${error instanceof Error ? error.message : error}\n`)
    return 1
  }
}
