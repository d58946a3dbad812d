import { fileURLToPath } from 'node:url'
import { defaultClientConditions, defineConfig } from 'vite'
import { plugins } from '../../vite.shared.ts'

const here = (path: string) => fileURLToPath(new URL(path, import.meta.url))

/**
 * `vite build` makes the app that ships. `vite build --mode example` makes the same pages over a
 * hand-made answer instead of the model, for tests of the pages and for looking at pictures.
 */
export default defineConfig(({ mode }) => ({
  root: here('.'),
  base: './',
  plugins: plugins(),
  worker: { format: 'es', plugins },
  resolve: {
    conditions: mode === 'example' ? ['example', ...defaultClientConditions] : [...defaultClientConditions],
  },
  // Inlined files would be data: addresses, which the content policy refuses for fonts and workers.
  build: {
    outDir: here('../../dist/web'),
    emptyOutDir: true,
    assetsInlineLimit: 0,
    target: 'es2023',
    // Which part of the page fetches what; `npm run check` weighs each view by it.
    manifest: true,
  },
}))
