import { events } from '../src/events/index.ts'
import { processes } from '../src/processes/index.ts'
import { compileKernel } from './compile.ts'
import { generateKernel } from './generate.ts'

/** The kernel of everything that is declared: the module and how its memory is to be filled. */
export async function kernelSource(): Promise<string> {
  const { source, compiled } = generateKernel([...processes, ...events])
  const binary = await compileKernel('index.ts', source)
  const text = Buffer.from(binary).toString('base64')
  return `export const kernel = ${JSON.stringify(compiled)}\nexport const binary = '${text}'\n`
}
