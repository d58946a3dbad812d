import { spawn } from 'node:child_process'
import { constants } from 'node:os'

/**
 * Runs a program with this Node in the same terminal and ends as it ends: same exit code, and signals
 * are passed on to it.
 *
 * @param {readonly string[]} args
 */
export function becomeChild(args) {
  const child = spawn(process.execPath, ['--enable-source-maps', ...args], { stdio: 'inherit' })
  process.on('SIGTERM', () => child.kill('SIGTERM'))
  // Ctrl-C in a terminal reaches the child by itself, and twice would cut its clean end short.
  process.on('SIGINT', () => process.stdin.isTTY || child.kill('SIGINT'))
  child.on('error', (error) => {
    console.error(error.message)
    process.exit(1)
  })
  child.on('exit', (code, signal) => {
    process.exit(signal === null ? (code ?? 1) : 128 + constants.signals[signal])
  })
}
