import { defineConfig } from 'vitest/config'
import { browserFlags, findBrowser, findFirefox } from './scripts/find-browser.mjs'
import { plugins } from './vite.shared.ts'

declare module 'vitest' {
  interface ProvidedContext {
    /** How playwright-core starts the browser of this machine: `chromium.launch(inject('browser'))`. */
    browser: { executablePath: string; args: string[] }
    /** The path of Firefox, empty where there is none. */
    firefox: string
  }
}

export default defineConfig({
  plugins: plugins(),
  test: {
    projects: [
      {
        extends: true,
        test: {
          name: 'unit',
          include: ['{packages,apps,validation,bench,examples,scripts}/**/*.test.{ts,tsx}'],
          exclude: ['**/node_modules/**', '**/dist/**', '**/*.browser.test.ts'],
        },
      },
      {
        extends: true,
        test: {
          name: 'browser',
          include: ['apps/web/**/*.browser.test.ts'],
          provide: {
            browser: { executablePath: findBrowser() ?? '', args: browserFlags() },
            firefox: findFirefox() ?? '',
          },
          testTimeout: 60_000,
          hookTimeout: 120_000,
          fileParallelism: false,
          // A busy machine can starve a browser for half a minute; the reporter marks what passed only then.
          retry: 1,
        },
      },
    ],
  },
})
