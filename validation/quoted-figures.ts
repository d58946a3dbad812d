import { readdirSync, readFileSync } from 'node:fs'
import { join } from 'node:path'
import type { Check } from './check.ts'
import { root } from './experiment/published.ts'
import { modelHash } from './model-hash.ts'

/** How a page says on which model its figures rest. */
export const figuresOf = (hash: string): string => `Figures of model ${hash}.`
const quoted = /Figures of model ([0-9a-f]{12})\./g

/** Every page that quotes figures of a model quotes those of this one. */
export function quotedFigures(): readonly Check[] {
  const now = modelHash()
  const pages = [
    'README.md',
    ...readdirSync(join(root, 'docs'), { recursive: true, encoding: 'utf8' })
      .filter((name) => name.endsWith('.md'))
      .map((name) => join('docs', name)),
  ]
  return pages.flatMap((page) => quotesIn(page, readFileSync(join(root, page), 'utf8'), now))
}

/** What a page quotes of another model than this one fails. */
export function quotesIn(page: string, text: string, now: string): readonly Check[] {
  return [...text.matchAll(quoted)].map(([, then]) => ({
    name: `figures quoted in ${page}`,
    outcome: then === now ? 'passed' : 'failed',
    says: then === now ? `of this model, ${now}` : `of model ${then}, and this one is ${now}: make them anew`,
  }))
}
