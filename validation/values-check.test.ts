import { readFileSync } from 'node:fs'
import { waterQuantities } from '@holdfast/seawater'
import { expect, test } from 'vitest'
import { checkValues } from './values-check.ts'

const own = readFileSync(new URL('./seawater/seawater-checks.csv', import.meta.url), 'utf8')
const header = 'id,quantity,inputs,expected,unit,tolerance,source,provenance'
const oneRow = (
  quantity: string,
  inputs: object,
  expected: number | string,
  unit = '1',
  tolerance = '0.001',
) =>
  `${header}\nX1,${quantity},"${JSON.stringify(inputs).replaceAll('"', '""')}",${expected},${unit},${tolerance},,\n`

test('every published and reckoned value of sea water comes out within its tolerance', () => {
  expect(checkValues(own).lines).toEqual(['164 passed, 0 failed'])
})

test('each row is checked: moved by three tolerances, every one of them fails', () => {
  const [first = '', ...rows] = own.trim().split('\n')
  const moved = rows.map((row) =>
    row.replace(/(}"),([^,]+),([^,]+),([^,]+),/, (_, end, expected, unit, tolerance) =>
      [end, Number(expected) + 3 * Number(tolerance), unit, tolerance, ''].join(','),
    ),
  )
  const { failed, passed, exitCode } = checkValues([first, ...moved].join('\n'))
  expect([passed, failed, exitCode]).toEqual([0, 164, 1])
})

test('a value that does not hold is shown with what was asked, expected, found and allowed', () => {
  const { lines, exitCode } = checkValues(oneRow('absolute_salinity', { S: 35 }, 36, 'g/kg'))
  expect(lines).toEqual([
    'X1 absolute_salinity {"S":35}: expected 36 g/kg, got 35.16504 g/kg, tolerance 0.001',
    '0 passed, 1 failed',
  ])
  expect(exitCode).toBe(1)
})

test('a file without rows, or without anything, is no success', () => {
  expect(checkValues(`${header}\n`)).toMatchObject({ passed: 0, exitCode: 1 })
  expect(checkValues('')).toMatchObject({ passed: 0, exitCode: 1 })
})

test('a file without a column says which', () => {
  const { lines, exitCode } = checkValues('id,quantity,expected,unit,tolerance\nX1,K0,1,1,1\n')
  expect(lines[0]).toContain('no column "inputs"')
  expect(exitCode).toBe(1)
})

test.each([
  ['no such quantity', oneRow('saltiness', { S: 35 }, 1), '"saltiness" is not accepted'],
  [
    'an input too much',
    oneRow('absolute_salinity', { S: 35, moon: 1 }, 35.165, 'g/kg'),
    'moon: 1 is not accepted',
  ],
  ['an input missing', oneRow('density_eos80', { S: 35 }, 1023, 'kg/m3'), 't: is missing'],
  [
    'a word for a number',
    oneRow('density_eos80', { S: 35, t: '25' }, 1023, 'kg/m3'),
    't: "25" is not accepted',
  ],
  ['an unknown word', oneRow('ion_concentration', { S: 35, ion: 'Xx', per: 'kg' }, 1, 'mg/kg'), 'ion: "Xx"'],
  ['outside a range', oneRow('density_eos80', { S: 60, t: 25 }, 1040, 'kg/m3'), 'salinity: 60'],
  ['another unit', oneRow('absolute_salinity', { S: 35 }, 35.165, 'mg/kg'), 'which is another unit'],
  ['inputs that are no object', oneRow('K0', [35], 1), 'no JSON object'],
  ['no expected number', oneRow('absolute_salinity', { S: 35 }, '', 'g/kg'), 'expected is no number'],
  ['no tolerance', oneRow('absolute_salinity', { S: 35 }, 35.165, 'g/kg', ''), 'tolerance is no number'],
  [
    'three of the carbonate system',
    oneRow('pCO2', { S: 35, t: 25, TA_umol_kg: 2300, DIC_umol_kg: 2000, pH_total: 8 }, 400, 'uatm'),
    'is not accepted',
  ],
])('%s is named as a failure and nothing is guessed', (_, file, says) => {
  const { lines, exitCode } = checkValues(file)
  expect(lines[0]).toContain(says)
  expect(exitCode).toBe(1)
})

test('every quantity of the published list is asked for by a row', () => {
  const asked = new Set(own.split('\n').map((row) => row.split(',')[1]))
  const without = waterQuantities.map(({ id }) => id).filter((id) => !asked.has(id))
  // No published value at hand; they are parts of the system whose other parts are checked.
  expect(without).toEqual(['fCO2', 'bicarbonate', 'carbon_dioxide', 'calcite_saturation'])
})
