import { waterQuantities } from '@holdfast/seawater'
import { expect, test } from 'vitest'
import { waterCommand } from './commands/water.ts'

/** What the command prints, and its exit code. */
function run(quantity?: string, pairs: readonly string[] = [], options: { json?: true } = {}) {
  const said = { out: '', err: '' }
  const code = waterCommand(quantity, pairs, options, {
    out: (line) => {
      said.out += `${line}\n`
    },
    err: (line) => {
      said.err += line
    },
    redraws: false,
    agrees: async () => undefined,
  })
  return { code, ...said }
}

test('a quantity is reckoned from inputs by name', () => {
  // Garcia & Gordon 1992, Limnol. Oceanogr. 37:1307: 274.610 µmol/kg at S 35, 10 °C (from memory).
  const { code, out, err } = run('oxygen_saturation', ['S=35', 't=10'])
  expect([code, err]).toEqual([0, ''])
  expect(out).toMatch(/^274\.61\d? umol\/kg$/m)
  expect(run('oxygen_saturation', ['S=35', 't=10,0']).out).toBe(out)
})

test('a program gets the value with its unit and what it was reckoned from', () => {
  const asked = JSON.parse(
    run('mix_two_waters', ['volume1_L=100', 'S1=35', 'volume2_L=100', 'S2=31', 't=25'], { json: true }).out,
  )
  expect(asked).toMatchObject({ quantity: 'mix_two_waters', inputs: { S1: 35 } })
  // Near the middle: the heavier water counts for a little more.
  expect(asked.value).toBeGreaterThan(33)
  expect(asked.value).toBeLessThan(33.02)
})

test('what is missing, unknown or beyond the range is said with what is accepted, with exit code 1', () => {
  expect(run('oxygen_saturation', ['S=35'])).toMatchObject({
    code: 1,
    out: '',
    err: expect.stringContaining('t'),
  })
  expect(run('oxygen_saturation', ['S=350', 't=10']).code).toBe(1)
  expect(run('oxygen_saturation', ['S=350', 't=10']).err).toContain('350')
  expect(run('phlogiston', []).err).toContain('phlogiston')
  expect(() => run('oxygen_saturation', ['35'])).toThrow()
  expect(() => run('salinity_from_specific_gravity', ['SG=1,026', 't=25', 't_ref=25'])).toThrow()
})

test('every quantity is listed with its inputs', () => {
  const { out } = run()
  for (const { id } of waterQuantities) expect(out).toContain(id)
  expect(JSON.parse(run(undefined, [], { json: true }).out)).toHaveLength(waterQuantities.length)
})
