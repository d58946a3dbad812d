import { expect, test } from 'vitest'
import { type ConvertOptions, convertCommand } from './commands/convert.ts'

/** What the command prints, and its exit code. */
function run(text: string, options: ConvertOptions) {
  const said = { out: '', err: '' }
  const code = convertCommand(text, options, {
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

test('a figure is said in every usual unit and form', () => {
  const { code, out, err } = run('1 mg/L NO3-N', { as: 'nitrate' })
  expect([code, err]).toEqual([0, ''])
  expect(out).toMatch(/^ *4\.427 {2}mg\/L NO3$/m)
  expect(out).toMatch(/^ *71\.39 {2}µmol\/L$/m)
})

test('a figure of two meanings is asked about with exit code 2, and the form answers', () => {
  const { code, out } = run('5 mg/L', { as: 'nitrate' })
  expect(code).toBe(2)
  expect(out).toContain('Nitrate: is "5 mg/L" of the ion, or of the atom in it?')
  expect(out).toContain('"5 mg/L NO3-N": as NO3-N')
  const asked = JSON.parse(run('5 mg/L', { as: 'nitrate', json: true }).out)
  expect(asked).toMatchObject({ question: { code: 'which-form', options: [{ answer: '5 mg/L NO3' }, {}] } })
  expect(run('5 mg/L', { as: 'nitrate', form: 'NO3-N', to: 'mg/L NO3' })).toMatchObject({
    code: 0,
    out: expect.stringMatching(/^22\.13 {2}mg\/L NO3$/m),
  })
  expect(run('5 L', { as: 'volume', to: 'gal' })).toMatchObject({
    code: 2,
    out: expect.stringContaining('"US gal"'),
  })
})

test('what cannot be read is said on the standard error, with exit code 1', () => {
  expect(run('5 foo', { as: 'nitrate' })).toEqual({
    code: 1,
    out: '',
    err: expect.stringContaining('Nitrate: "5 foo" has no unit we know.'),
  })
  expect(run('5 mg/L NO3', { as: 'nitrate', to: 'µmol/kg' })).toMatchObject({
    code: 1,
    err: expect.stringContaining('the density of the water is not told'),
  })
  expect(() => run('5 mg/L', { as: 'nitrogen' })).toThrow()
  expect(() => run('5 L', { as: 'volume', form: 'NO3' })).toThrow()
})

test('a limit stays a limit, with what was typed and the step beside it', () => {
  const document = JSON.parse(
    run('<0,03 ppm PO4', { as: 'phosphate', to: 'ppb P', step: 0.03, json: true }).out,
  )
  expect(document).toEqual({
    quantity: 'phosphate',
    text: '<0,03 ppm PO4',
    unit: 'ppm',
    form: 'PO4',
    canonical_unit: 'mg/L PO4',
    values: [{ unit: 'ppb P', is: 'below', limit: expect.closeTo(9.784, 3), step: expect.closeTo(9.784, 3) }],
  })
})

test('units by the kilogram and light over a day are had by what they need', () => {
  expect(run('80 µmol/kg', { as: 'nitrate', density: 1.0233, to: 'µmol/L' }).out).toMatch(
    /^81\.86 {2}µmol\/L$/m,
  )
  expect(run('200 PAR', { as: 'light', hours: 10, to: 'mol/m2/d' }).out).toMatch(/^ *7\.2 {2}mol\/m2\/d$/m)
})
