import { existsSync } from 'node:fs'
import { join } from 'node:path'
import { root } from './root.mjs'

/**
 * The programs for Node, each built into one file dist/<name>.mjs. A worker thread is a program too: it
 * is started by its built file.
 *
 * @type {Readonly<Record<string, string>>}
 */
const programs = {
  server: 'apps/server/src/main.ts',
  'server-worker': 'apps/server/src/worker.ts',
  holdfast: 'apps/cli/src/main.ts',
  validate: 'validation/validate.ts',
  'record-writer': 'validation/record/writer.ts',
  'check-cases': 'validation/check-cases.ts',
  'check-values': 'validation/check-values.ts',
  'check-key': 'validation/check-key.ts',
  'check-imports': 'validation/check-imports.ts',
  experiment: 'validation/experiment.ts',
  'make-experiments-page': 'validation/make-experiments-page.ts',
  bench: 'bench/bench.ts',
  'make-examples': 'examples/make-examples.ts',
  'make-processes-page': 'packages/ecosystem/build/make-processes-page.ts',
  screenshots: 'apps/web/screenshots/screenshots.ts',
}

/** The programs whose source is there, by name. @returns {Record<string, string>} */
export function presentPrograms() {
  const present = Object.entries(programs).filter(([, source]) => existsSync(join(root, source)))
  return Object.fromEntries(present)
}

/** Whether there is a web app to build. */
export function hasWebApp() {
  return existsSync(join(root, 'apps/web/vite.config.ts')) && existsSync(join(root, 'apps/web/index.html'))
}
