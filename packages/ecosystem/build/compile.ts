import { readFileSync } from 'node:fs'
import { fileURLToPath } from 'node:url'

const folder = fileURLToPath(new URL('../kernel/', import.meta.url))

/**
 * Compiles AssemblyScript to WebAssembly: the files of `kernel/`, and `processes.ts` as it was generated.
 *
 * @param entry  the file whose exports are those of the module
 * @throws Error with what the compiler says
 */
export async function compileKernel(entry: string, processes: string): Promise<Uint8Array> {
  // The compiler is large, and most builds find the kernel kept.
  const { default: asc } = await import('assemblyscript/asc')
  let binary: Uint8Array | undefined
  const { error, stderr } = await asc.main(
    [
      entry,
      '--outFile',
      'kernel.wasm',
      '--optimizeLevel',
      '3',
      '--shrinkLevel',
      '0',
      '--runtime',
      'stub',
      '--noAssert',
      '--enable',
      'simd',
      '--initialMemory',
      '1',
    ],
    {
      readFile: (name) => (name === 'processes.ts' ? processes : readOwn(name)),
      writeFile: (_name, contents) => {
        if (contents instanceof Uint8Array) binary = contents
      },
      listFiles: () => [],
    },
  )
  if (error || !binary) throw new Error(`The kernel does not compile.\n${stderr.toString()}`)
  return binary
}

function readOwn(name: string): string | null {
  try {
    return readFileSync(`${folder}${name}`, 'utf8')
  } catch {
    // The compiler looks for a file in several places.
    return null
  }
}
