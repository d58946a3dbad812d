import { fileURLToPath } from 'node:url'
import { defineConfig } from 'vite'
import { plugins } from '../../vite.shared.ts'

/** The page of the ensemble's bench, built when it is asked for. */
export default defineConfig({
  root: fileURLToPath(new URL('.', import.meta.url)),
  base: './',
  plugins: plugins(),
  worker: { format: 'es', plugins },
  build: { emptyOutDir: true, assetsInlineLimit: 0, target: 'es2023' },
})
