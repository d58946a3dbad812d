import { cpSync } from 'node:fs'
import { dirname, join } from 'node:path'
import { root, startedServer, temporaryFolder } from '@holdfast/testing'
import type { Browser, Page } from 'playwright-core'
import { afterAll, beforeAll, expect, it } from 'vitest'
import { buildServer, serveLog } from './log-site.ts'
import { accessibilityIssues, startBrowser, visit } from './visitor.ts'

let browser: Browser

beforeAll(async () => {
  browser = await startBrowser()
})

afterAll(() => browser?.close())

/** A search takes its time on a machine that is busy with other tests. */
const patient = { timeout: 150_000 }
const key = (page: Page, name: string | RegExp) => page.getByRole('button', { name })
const asked = (page: Page) => key(page, 'Work out a crew').press('Enter')

it('the search with its trials tells how far it is, is stopped by a key, and starts anew', async () => {
  const program = await buildServer('web-crew')
  const examples = join(dirname(program), '..', 'examples')
  cpSync(join(root, 'examples', 'reef-90'), join(examples, 'reef-90'), { recursive: true })
  const address = await startedServer(program, temporaryFolder()).address
  const { page, complaints } = await visit(browser, `${address}/?place=surfaces&view=crew`, {
    from: 'heading',
  })
  await asked(page)
  await page.getByText(/The crew is being worked out, \d+ % done\./).waitFor(patient)
  expect(await page.getByRole('progressbar', { name: 'The crew: share worked out' }).count()).toBe(1)
  await key(page, 'Stop it').press('Enter')
  await page.getByText('This run was stopped before it was done.').first().waitFor()
  expect(await page.locator('.working progress').count()).toBe(0)
  expect(await page.getByRole('heading', { name: 'Who, and what for' }).count()).toBe(0)
  await page.evaluate(() => {
    const shares: number[] = []
    Object.assign(window, { shares })
    new MutationObserver(() => {
      const share = document.querySelector<HTMLProgressElement>('.working progress')?.value
      if (share !== undefined && share !== shares.at(-1)) shares.push(share)
    }).observe(document, { subtree: true, childList: true, attributes: true })
  })
  await asked(page)
  await page.getByText(/^Who may not come/).waitFor(patient)
  const shares = await page.evaluate(() => (window as unknown as { shares: readonly number[] }).shares)
  // The fitting takes the first part, the rounds, in each of which a crew lives a year, the rest.
  expect(shares.some((share) => share > 0.4)).toBe(true)
  expect(shares).toEqual(shares.toSorted((a, b) => a - b))
  expect(await accessibilityIssues(page)).toEqual([])
  expect(complaints).toEqual([])
  await page.context().close()
}, 400_000)

it('a plan is kept by keys alone, told with its steps, logged as animals come, and taken back', async () => {
  const program = await buildServer('web-crew-kept', 'example')
  for (const width of [390, 1280]) {
    const { record, lines } = await serveLog(program)
    const crew = record.replace('place=record', 'place=surfaces&view=crew')
    const { page, complaints } = await visit(browser, crew, { from: 'heading', width })
    await asked(page)
    await key(page, 'Keep this plan').press('Enter')
    const kept = page.getByRole('region', { name: 'The plan you kept' })
    await kept.waitFor()
    await page.getByText('This plan is kept').waitFor()
    const [line] = await lines()
    expect(line?.says).toBe(
      'Crew plan accepted: 2 Trochus histrio, 2 Trochus histrio, 1 Mespilia globulus to come in 2 steps',
    )
    expect(await accessibilityIssues(page)).toEqual([])
    expect(await page.evaluate(() => document.documentElement.scrollWidth - innerWidth)).toBeLessThanOrEqual(
      0,
    )
    await kept.getByRole('button', { name: 'Log that they came' }).first().press('Enter')
    await key(page, 'Log it').press('Enter')
    await page.getByText('Logged: 2 Trochus histrio added').first().waitFor()
    await page.goto(crew)
    await kept.getByText('2 banded trochus snails: came, as logged.').waitFor()
    expect(await kept.getByRole('button', { name: 'Log that' }).count()).toBe(2)
    await key(page, 'Take this plan back').press('Enter')
    await kept.waitFor({ state: 'detached' })
    await key(page, 'Bring it back').press('Enter')
    await kept.waitFor()
    expect(complaints).toEqual([])
    await page.context().close()
  }
}, 200_000)
