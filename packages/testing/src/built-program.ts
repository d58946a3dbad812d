import { join } from 'node:path'
import { build } from 'vite'
import { plugins } from '../../../vite.shared.ts'

/** The root of the project. */
export const root = join(import.meta.dirname, '..', '..', '..')

/**
 * Builds a program for Node as it ships, apart from the build in dist.
 *
 * @param source  such as apps/cli/src/main.ts
 * @param asker   a name of the test file's own: files run at the same time, and none may run what
 *   another is writing
 * @returns the program's file
 */
export async function buildProgram(source: string, asker: string): Promise<string> {
  const [, name = 'program'] = source.split('/')
  const folder = join(root, '.build', 'under-test', asker, name)
  await build({
    configFile: false,
    root,
    logLevel: 'warn',
    plugins: plugins(),
    publicDir: false,
    ssr: { noExternal: [/^@holdfast\//] },
    build: {
      ssr: join(root, source),
      target: 'node20.19',
      outDir: folder,
      rolldownOptions: {
        output: { entryFileNames: `${name}.mjs` },
        checks: { bundlerTimings: false },
      },
    },
  })
  return join(folder, `${name}.mjs`)
}
