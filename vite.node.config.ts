import { defineConfig } from 'vite'
import { presentPrograms } from './scripts/programs.mjs'
import { root } from './scripts/root.mjs'
import { plugins } from './vite.shared.ts'

/**
 * Node programs: our own packages are TypeScript and are bundled, packages of npm stay outside. Each
 * program is one file with what it shares in dist/chunks.
 */
export default defineConfig({
  root,
  plugins: plugins(),
  publicDir: false,
  ssr: { noExternal: [/^@holdfast\//] },
  build: {
    ssr: true,
    target: 'node20.19',
    outDir: 'dist',
    emptyOutDir: false,
    sourcemap: true,
    rolldownOptions: {
      input: presentPrograms(),
      output: { entryFileNames: '[name].mjs', chunkFileNames: 'chunks/[name]-[hash].mjs' },
    },
  },
})
