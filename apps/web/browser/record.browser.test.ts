import { gzipSync } from 'node:zlib'
import { expect, it } from 'vitest'
import { servedSite } from './served-site.ts'
import { accessibilityIssues, looks, visit } from './visitor.ts'

const site = servedSite('production')

it.each(looks)('the sums answer as one types, $width wide and $scheme', async (look) => {
  const address = `${site.address}?place=record&view=sums`
  const { page, complaints } = await visit(site.browser, address, { from: 'heading', ...look })
  const figure = page.getByLabel('Figure')
  const converted = page.locator('#convert-answer')
  await figure.waitFor()
  await figure.fill('5 mg/L')
  expect(await converted.textContent()).toContain('of the ion, or of the atom')
  await page.getByRole('button', { name: '5 mg/L NO3-N' }).click()
  expect(await figure.inputValue()).toBe('5 mg/L NO3-N')
  expect(await converted.textContent()).toContain('22.13')
  await figure.fill('5 foo')
  expect(await converted.textContent()).toContain('has no unit we know')

  const answer = page.locator('#sum-answer')
  const before = await answer.textContent()
  await page.getByLabel('Specific gravity').fill('1.025')
  expect(await answer.textContent()).not.toBe(before)
  const sum = page.getByLabel('You want to know')
  await sum.selectOption({ label: 'How much salt for so much new water?' })
  await page.getByLabel('Finished water').fill('20 gal')
  expect(await accessibilityIssues(page)).toEqual([])
  await page.getByRole('button', { name: '20 US gal' }).press('Enter')
  // 75.7 L of salinity 35 hold 2.72 kg of salt (EOS-80), and the mix is nine tenths of it.
  expect(await answer.textContent()).toBe('3.03 kg of mix')
  await page.getByLabel('Salinity wanted').fill('350')
  expect(await answer.textContent()).toContain('Give 0 to 42, such as 35.')
  expect(await page.getByLabel('Salinity wanted').getAttribute('aria-invalid')).toBe('true')

  const small = await page
    .locator('main :is(input, select, button)')
    .evaluateAll((each) =>
      each.filter((one) => one.getBoundingClientRect().height < 44).map((one) => one.outerHTML),
    )
  expect(small).toEqual([])
  const beyond = await page.evaluate(() => document.documentElement.scrollWidth - innerWidth)
  expect(beyond).toBeLessThanOrEqual(0)
  expect(await accessibilityIssues(page)).toEqual([])
  expect(complaints).toEqual([])
  await page.context().close()
})

it('a sum says what it is, and what it may harm before its result', async () => {
  const address = `${site.address}?place=record&view=sums&sum=salt`
  const { page } = await visit(site.browser, address, { from: 'heading' })
  await page.getByText('The salt that turns so much fresh water into sea water').waitFor()
  const places = ['#sum-caution', '#sum-answer'].map((part) => page.locator(part).boundingBox())
  const [caution, answer] = await Promise.all(places)
  expect(await page.locator('#sum-caution').textContent()).toContain('irritates eyes and lungs')
  expect(caution?.y).toBeLessThan(answer?.y ?? 0)
  await page.getByLabel('You want to know').selectOption({ label: 'How much sodium nitrate raises nitrate?' })
  expect(await page.locator('#sum-caution').textContent()).toContain('makes fire worse')
  expect(new URL(page.url()).searchParams.get('sum')).toBe('nitrate by sodium nitrate')
  await page.context().close()
})

it('an empty figure is shown how its quantity is written', async () => {
  const { page } = await visit(site.browser, `${site.address}?place=record&view=sums`, { from: 'heading' })
  await page.getByLabel('It is').selectOption({ label: 'Temperature' })
  await page.getByLabel('Figure').fill('')
  expect(await page.locator('#convert-answer').textContent()).toBe('A number with its unit, such as 78 °F.')
  await page.context().close()
})

it('the first view does without the sums, and the log without them and without the model', async () => {
  const asked: string[] = []
  const { page } = await visit(site.browser, site.address, {
    prepare: async (page) => page.on('request', (request) => asked.push(request.url())),
  })
  const scripts = async () => {
    const urls = asked.filter((url) => url.endsWith('.js'))
    return (await Promise.all(urls.map(async (url) => (await fetch(url)).text()))).join('')
  }
  const sums = 'How far is aragonite saturated?'
  expect(await scripts()).not.toContain(sums)
  asked.length = 0
  await page.getByRole('link', { name: 'Record' }).click()
  await page.getByRole('heading', { name: 'What happened?' }).waitFor()
  expect(await scripts()).not.toContain(sums)
  expect(await scripts()).not.toContain('river')
  await page.getByRole('link', { name: 'Sums' }).click()
  await page.getByLabel('You want to know').waitFor()
  expect(await scripts()).toContain(sums)
  expect(new URL(page.url()).searchParams.get('place')).toBe('record')
  await page.context().close()
})

it('the log is written with less than 100 kB of script, packed', async () => {
  const asked: string[] = []
  const { page } = await visit(site.browser, `${site.address}?place=record`, {
    from: 'heading',
    prepare: async (page) => page.on('request', (request) => asked.push(request.url())),
  })
  await page.getByRole('heading', { name: 'What happened?' }).waitFor()
  const scripts = asked.filter((url) => url.endsWith('.js'))
  const packed = await Promise.all(
    scripts.map(
      async (url) => gzipSync(new Uint8Array(await (await fetch(url)).arrayBuffer()), { level: 9 }).length,
    ),
  )
  expect(packed.length).toBeGreaterThan(1)
  expect(packed.reduce((sum, bytes) => sum + bytes)).toBeLessThan(100_000)
  await page.context().close()
})
