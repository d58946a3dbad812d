import { existsSync, readFileSync } from 'node:fs'
import { dirname, join } from 'node:path'
import { expect, test } from 'vitest'
import { root } from '../root.mjs'
import { filesUnder } from './sources.mjs'

/** Where a link or a picture of a page of ours points, when it points into the project. */
const destinations = (page: string): readonly string[] =>
  [...page.matchAll(/\]\(([^)\s]+)\)/g)]
    .map(([, to]) => to ?? '')
    .filter((to) => !/^(https?:|mailto:|#)/.test(to))
    .map((to) => to.split('#')[0] ?? '')

const broken = (file: string, page: string): readonly string[] =>
  destinations(page)
    .filter((to) => !existsSync(join(root, dirname(file), to)))
    .map((to) => `${file}: ${to}`)

const pages = filesUnder(root).filter((file) => file.endsWith('.md'))

test('every link between the pages leads somewhere', () => {
  expect(pages.length).toBeGreaterThan(10)
  expect(pages.flatMap((file) => broken(file, readFileSync(join(root, file), 'utf8')))).toEqual([])
})

test('a link that leads nowhere is seen', () => {
  expect(
    broken('README.md', '[the moon](docs/moon.md), [here](LICENSE), [there](https://example.org)'),
  ).toEqual(['README.md: docs/moon.md'])
})
