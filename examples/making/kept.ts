import { readFileSync } from 'node:fs'
import type { ExampleFiles } from './files.ts'

/** The files of an example as they lie in its folder. */
export function kept(name: string): ExampleFiles {
  const text = (file: string): string => readFileSync(new URL(`../${name}/${file}`, import.meta.url), 'utf8')
  return {
    'system.json': text('system.json'),
    'tests.csv': text('tests.csv'),
    'log.json': text('log.json'),
  }
}
