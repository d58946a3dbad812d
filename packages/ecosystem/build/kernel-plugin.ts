import { fileURLToPath } from 'node:url'
import { type Plugin, runnerImport } from 'vite'
import { keptKernel } from './kept-kernel.ts'
import type * as KernelSource from './kernel-source.ts'

const id = 'virtual:holdfast-kernel'
const here = (path: string): string => fileURLToPath(new URL(path, import.meta.url))

/** Builds the kernel out of the declarations whenever the app, a program or the tests are built. */
export function kernelPlugin(): Plugin {
  return {
    name: 'holdfast-kernel',
    resolveId: (source) => (source === id ? `\0${id}` : undefined),
    async load(resolved) {
      if (resolved !== `\0${id}`) return undefined
      const { module } = await runnerImport<typeof KernelSource>(here('./kernel-source.ts'))
      for (const folder of ['declare', 'processes', 'events', 'accounts'])
        this.addWatchFile(here(`../src/${folder}/index.ts`))
      const { source, compiled } = module.generated
      const text = Buffer.from(await keptKernel(source)).toString('base64')
      return `export const kernel = ${JSON.stringify(compiled)}\nexport const binary = '${text}'\n`
    },
  }
}
