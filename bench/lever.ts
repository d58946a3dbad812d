/** A lever dragged on the water page of the program as it ships: frames drawn, and how soon there are new numbers. */
import { spawn } from 'node:child_process'
import { mkdtempSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { dirname, join } from 'node:path'
import { createInterface } from 'node:readline'
import { chromium, type Page } from 'playwright-core'
import { browserFlags, findBrowser } from '../scripts/find-browser.mjs'
import { table } from './table.ts'

const lines = '.fan-view .outline-levers .outline-median'
const patience = 180_000
const steps = 9
const drag_ms = 4000

/** The example of the program, in a folder of its own. */
export async function leverBench(): Promise<void> {
  const executablePath = findBrowser()
  if (executablePath === undefined) {
    console.log('No Chrome, Edge or Chromium found: set HOLDFAST_BROWSER to the path of one.')
    return
  }
  const data = mkdtempSync(join(tmpdir(), 'holdfast-bench-lever-'))
  const server = spawn(process.execPath, [join(dirname(process.argv[1]), 'server.mjs'), '--data', data], {
    env: { ...process.env, HOLDFAST_NO_BROWSER: '1' },
    stdio: ['ignore', 'pipe', 'inherit'],
  })
  const browser = await chromium.launch({ executablePath, args: browserFlags() })
  try {
    const page = await browser.newPage({ viewport: { width: 1280, height: 900 } })
    await page.goto(`${await addressOf(server)}/?place=water`)
    await page.locator('.fan').first().waitFor({ timeout: patience })
    await page.getByText('being worked out').first().waitFor({ state: 'detached', timeout: patience })
    const dragged = await dragging(page)
    const waits = await stepping(page)
    const middle = [...waits].sort((a, b) => a - b)[Math.floor(waits.length / 2)]
    console.log(
      table([
        [`Chromium ${browser.version()}, example of 600 L`, 'measured', 'to reach'],
        ['frames a second while a finger drags', dragged.frames.toFixed(0), '30'],
        ['longest wait for a frame, ms', dragged.longest.toFixed(0), ''],
        ['new lines a second while a finger drags', dragged.draws.toFixed(1), ''],
        [`one step to new lines, middle of ${steps}, ms`, middle.toFixed(0), '50'],
        ['one step to new lines, least, ms', Math.min(...waits).toFixed(0), ''],
      ]),
    )
  } finally {
    await browser.close()
    server.kill('SIGTERM')
    rmSync(data, { recursive: true, force: true })
  }
}

async function addressOf({ stdout }: ReturnType<typeof spawn>): Promise<string> {
  if (!stdout) throw new Error('The server has no output to read its address from.')
  for await (const line of createInterface(stdout)) if (line.startsWith('http')) return line
  throw new Error('The server ended without an address.')
}

const handle = (page: Page) => page.getByRole('slider', { name: 'Water each time' })

/** To and fro with the mouse at 60 moves a second. */
async function dragging(page: Page) {
  await handle(page).scrollIntoViewIfNeeded()
  const track = await handle(page).boundingBox()
  if (!track) throw new Error('The lever of water changes is not on the page.')
  const at = (share: number) => [track.x + share * track.width, track.y + track.height / 2] as const
  await page.evaluate((lines) => {
    const seen = { frames: [] as number[], draws: 0, last: '' }
    Object.assign(window, { seen })
    const frame = () => {
      const drawn = document.querySelector(lines)?.getAttribute('d') ?? ''
      seen.frames.push(performance.now())
      if (drawn !== seen.last) seen.draws += 1
      seen.last = drawn
      requestAnimationFrame(frame)
    }
    requestAnimationFrame(frame)
  }, lines)
  await page.mouse.move(...at(0.3))
  await page.mouse.down()
  const began = performance.now()
  while (performance.now() - began < drag_ms) {
    const share = 0.5 + 0.4 * Math.sin((performance.now() - began) / 600)
    await page.mouse.move(...at(share))
    await page.waitForTimeout(16)
  }
  const seen = await page.evaluate(
    () => (window as unknown as { seen: { frames: number[]; draws: number } }).seen,
  )
  await page.mouse.up()
  const gaps = seen.frames.slice(1).map((time, i) => time - seen.frames[i])
  const seconds = gaps.reduce((sum, gap) => sum + gap, 0) / 1000
  return { frames: gaps.length / seconds, longest: Math.max(...gaps), draws: seen.draws / seconds }
}

/** From a key that moves the lever by a step to lines that answer to it, ms, when nothing else is under way. */
async function stepping(page: Page): Promise<readonly number[]> {
  const waits: number[] = []
  for (let i = 0; i < steps; i++) {
    await page.getByText('being worked out').first().waitFor({ state: 'detached', timeout: patience })
    await handle(page).focus()
    await page.evaluate((lines) => {
      const line = () => document.querySelector(lines)?.getAttribute('d')
      const before = line()
      const waited = new Promise<number>((drawn) => {
        addEventListener(
          'keydown',
          (event) => {
            const look = () => {
              const now = line()
              if (now !== undefined && now !== before) drawn(performance.now() - event.timeStamp)
              else requestAnimationFrame(look)
            }
            requestAnimationFrame(look)
          },
          { once: true },
        )
      })
      Object.assign(window, { waited })
    }, lines)
    await page.keyboard.press(i % 2 === 0 ? 'ArrowRight' : 'ArrowLeft')
    waits.push(await page.evaluate(() => (window as unknown as { waited: Promise<number> }).waited))
  }
  return waits
}
