import { createHash } from 'node:crypto'
import { mkdirSync, readdirSync, readFileSync, renameSync, writeFileSync } from 'node:fs'
import { join } from 'node:path'
import { fileURLToPath } from 'node:url'
import { compileKernel } from './compile.ts'

const sources = fileURLToPath(new URL('../kernel/', import.meta.url))
const kept = fileURLToPath(new URL('../../../.build/kernel/', import.meta.url))
const lockfile = fileURLToPath(new URL('../../../package-lock.json', import.meta.url))
const compiler = fileURLToPath(new URL('./compile.ts', import.meta.url))

/**
 * The compiled kernel of these processes, from the last build where nothing that it is made of has changed since:
 * the compiler takes several seconds, and every program and every test of the page is built with the kernel in it.
 *
 * @throws Error with what the compiler says
 */
export async function keptKernel(processes: string): Promise<Uint8Array> {
  const file = join(kept, `${madeOf(processes)}.wasm`)
  try {
    return readFileSync(file)
  } catch {
    const binary = await compileKernel('index.ts', processes)
    mkdirSync(kept, { recursive: true })
    // Builds run side by side, and none may read what another has half written.
    const own = `${file}.${process.pid}`
    writeFileSync(own, binary)
    renameSync(own, file)
    return binary
  }
}

function madeOf(processes: string): string {
  const hash = createHash('sha256').update(processes)
  const files = readdirSync(sources)
    .sort()
    .map((name) => join(sources, name))
  for (const file of [...files, compiler, lockfile]) hash.update('\0').update(readFileSync(file))
  return hash.digest('hex')
}
