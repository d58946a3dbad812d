import { readdirSync } from 'node:fs'
import { dirname, join } from 'node:path'
import { fileURLToPath } from 'node:url'

const here = dirname(fileURLToPath(import.meta.url))
// Seen from dist or its chunks, where programs are built to, and from its source alike.
const project = here.slice(0, here.search(/[\\/](dist|validation)([\\/]|$)/))

/** Root of the project. */
export const root = project

const folder = join(project, 'validation', 'experiments')

/** The files of our published experiments, in the order of their names. */
export const published = (): readonly string[] =>
  readdirSync(folder)
    .filter((name) => name.endsWith('.json'))
    .sort()
    .map((name) => join(folder, name))
