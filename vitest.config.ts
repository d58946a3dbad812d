import { defineConfig } from 'vitest/config'
import { plugins } from './vite.shared.ts'

export default defineConfig({
  plugins: plugins(),
  test: {
    projects: [
      {
        extends: true,
        test: {
          name: 'unit',
          include: ['{packages,apps,validation,bench,examples,scripts}/**/*.test.{ts,tsx,mjs}'],
          exclude: ['**/node_modules/**', '**/dist/**', '**/*.browser.test.ts'],
        },
      },
      {
        extends: true,
        test: {
          name: 'browser',
          include: ['apps/web/**/*.browser.test.ts'],
          testTimeout: 60_000,
          hookTimeout: 120_000,
          fileParallelism: false,
        },
      },
    ],
  },
})
