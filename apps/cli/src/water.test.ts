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
})

test('all that is wrong is said at once, and what was refused is not called missing', () => {
  const { code, err } = run('mix_two_waters', ['volume1_L=20 kg', 'S1=1.026 SG 25/25 °C', 'S2=35', 'S2=30'])
  expect(code).toBe(1)
  expect(err).toContain('volume1_L: "20 kg" is in a unit of another kind.')
  expect(err).toContain('S1: "1.026 SG 25/25 °C" is a specific gravity.')
  expect(err).toContain('S2: is given twice.')
  expect(err).toMatch(/^volume2_L: is missing/m)
  expect(err).not.toMatch(/^(volume1_L|S1): is missing/m)
})

test('a value may bear its own unit, and a bare number has that of its input', () => {
  const warm = run('oxygen_saturation', ['S=35', 't=25']).out
  expect(run('oxygen_saturation', ['S=35 ppt', 't=77 °F']).out).toBe(warm)
  const changed = run('concentration_after_changes', ['value=20', 'value_new=0', 'fraction=20 %', 'count=2'])
  expect(changed.out).toMatch(/^12\.8 /)
  const gallons = JSON.parse(
    run('top_off_volume', ['S=36', 'S_target=35', 't=25', 'volume_L=100 US gal'], { json: true }).out,
  )
  expect(gallons.inputs.volume_L).toBeCloseTo(378.54, 2)
})

test('what has two meanings is asked about with exit code 2', () => {
  const given = ['S=36', 'S_target=35', 't=25', 'volume_L=100 gal']
  expect(run('top_off_volume', given)).toMatchObject({
    code: 2,
    out: expect.stringContaining('"100 US gal"'),
  })
  expect(JSON.parse(run('top_off_volume', given, { json: true }).out)).toMatchObject({
    question: { code: 'which-gallon', options: [{ answer: '100 US gal' }, { answer: '100 imp gal' }] },
  })
  const gravity = run('salinity_from_specific_gravity', ['SG=1,026', 't=25', 't_ref=25'])
  expect(gravity).toMatchObject({ code: 2, out: expect.stringContaining('"1.026"') })
})

test('a result says for what it holds and what it rests on', () => {
  const { out } = run('oxygen_saturation', ['S=35', 't=25'])
  expect(out).toContain('Holds for S 0 to 42, t -1.922')
  expect(out).toContain('Rests on Garcia & Gordon 1992.')
  // Carbonic acid holds for S 19 to 43, 2 to 35 °C (Lueker et al. 2000), aragonite for S 5 to 44, 5 to 40 °C
  // (Mucci 1983), as their files in the package of sea water say.
  const pair = ['TA_umol_kg=2300', 'pH_total=8.1', 'S=35', 't=25']
  expect(JSON.parse(run('aragonite_saturation', pair, { json: true }).out).holds_for).toEqual(
    expect.arrayContaining([
      { input: 'S', accepted: '19 to 43' },
      { input: 't', accepted: '5 to 35' },
      { input: 'TA_umol_kg', accepted: 'above 0 to 1000000' },
    ]),
  )
})

test('every quantity is listed with its inputs', () => {
  const { out } = run()
  for (const { id } of waterQuantities) expect(out).toContain(id)
  expect(JSON.parse(run(undefined, [], { json: true }).out)).toHaveLength(waterQuantities.length)
})

test('just beyond the range that is told a quantity is refused', () => {
  const { holds_for } = JSON.parse(run('oxygen_saturation', ['S=35', 't=25'], { json: true }).out)
  expect(holds_for).toHaveLength(2)
  expect(run('oxygen_saturation', ['S=42', 't=25']).code).toBe(0)
  expect(run('oxygen_saturation', ['S=42.01', 't=25']).code).toBe(1)
  expect(run('oxygen_saturation', ['S=35', 't=40.01']).code).toBe(1)
})
