import { run } from '../run.ts'
import type { Ran } from './run-cli.ts'

/** Runs a command in this process, with nobody at its input: quick, where no process of its own is the matter. */
export async function runHere(args: readonly string[], data: string): Promise<Omit<Ran, 'signal'>> {
  let [out, err] = ['', '']
  const terminal = {
    out: (text: string) => {
      out += `${text}\n`
    },
    err: (text: string) => {
      err += text
    },
    redraws: false,
    agrees: async () => undefined,
  }
  const code = await run([...args, '--data', data], terminal)
  return { code, out, err }
}
