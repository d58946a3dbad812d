import { identify } from '@holdfast/identification'
import { Refused } from '@holdfast/logbook'
import { expect, test } from 'vitest'
import { type KeyOptions, keyCommand } from './commands/key.ts'

interface Ran {
  readonly out: string
  readonly err: string
}

/** Runs the command; `typed` are the lines of somebody who answers. */
async function run(
  noted: readonly string[],
  options: Partial<KeyOptions> = {},
  typed?: readonly string[],
): Promise<Ran> {
  let [out, err] = ['', '']
  const lines = [...(typed ?? [])]
  await keyCommand(
    noted,
    { unknown: [], ...options },
    {
      out: (text) => {
        out += `${text}\n`
      },
      err: (text) => {
        err += text
      },
      redraws: false,
      agrees: async () => undefined,
      ...(typed && { asks: async () => lines.shift() ?? 'q' }),
    },
  )
  return { out, err }
}

const brownSlime = ['colour=brown', 'form=slime_lumps_strings', 'gas_bubbles_afternoon=many_trapped']

test('a growth is named, cautions come before what to do, and the next look is told', async () => {
  const { out } = await run(brownSlime)
  expect(out).toMatch(/^It is most likely dinoflagellate mat \(\d+\s%\)\./)
  expect(out.indexOf('Treat slime as toxic')).toBeLessThan(
    out.indexOf('Gloves and glasses; stop what starves'),
  )
  expect(out).toContain('Next: Is there less of it before the lights come on? (night_retreat, torch)')
})

test('as JSON it carries chances, the response, the next look, cautions and look-alikes', async () => {
  const { out } = await run(brownSlime, { json: true })
  const found = JSON.parse(out)
  expect(found).toMatchObject({
    ends: 'agreed',
    hands_off: true,
    response: { key: 'feed_the_water' },
    ask_next: { key: 'night_retreat' },
  })
  expect(found.kinds[0].kind).toBe('dino')
  expect(found.kinds).toHaveLength(16)
  expect(found.cautions[0].key).toBe('palytoxin')
})

test('what cannot be looked at is not asked for', async () => {
  const { out } = await run(brownSlime, { json: true, unknown: ['night_retreat'] })
  expect(JSON.parse(out).ask_next.key).toBe('cells_microscope')
})

test('every trait is listed with its states, those of the finer kinds too', async () => {
  const { out } = await run([], { traits: true })
  for (const text of ['cells_microscope', 'glass_shells', 'cell_shape (dino)', 'thread_shape (cyano)'])
    expect(out).toContain(text)
})

test.each([
  [['brown'], 'Traits', 'has no "="'],
  [['colour=brown', 'colour=purple'], 'colour', 'given twice'],
  [['colour=blue', 'taste=salt'], 'colour', 'is not known'],
])('%j is refused with what would be right', async (noted, where, got) => {
  const refused = await run(noted).catch((error: unknown) => error)
  expect(refused).toBeInstanceOf(Refused)
  expect((refused as Refused).issues[0]).toMatchObject({ where, got: expect.stringContaining(got) })
})

test('all that is wrong is told at once', async () => {
  const refused = await run(['colour=blue', 'taste=salt']).catch((error: unknown) => error)
  expect((refused as Refused).issues).toHaveLength(2)
})

test('who is there is asked on, by number or by name, until the measures agree', async () => {
  const { out } = await run([], {}, ['7', 'bright_green'])
  expect(out).toContain('What shape does it grow in?')
  expect(out).toContain('It is most likely bubble algae')
  expect(out.trimEnd().split('\n').join(' ')).not.toMatch(/Number;/)
})

test('an answer can be taken back, and one that cannot be told is passed over', async () => {
  const first = identify({}).next?.key ?? ''
  const second = identify({}, [first]).next?.asks ?? ''
  const { out } = await run([], {}, ['7', 'b', '', 'q'])
  expect(out.match(/What shape does it grow in\?/g)).toHaveLength(2)
  expect(out).toContain(second)
})

test('what is no answer is asked again', async () => {
  const { out, err } = await run([], {}, ['99', 'q'])
  expect(err).toContain('form: "99" is no answer. Give a number from 1 to 14, Enter, b or q.')
  expect(out).not.toContain('99')
})
