import { askWater } from '@holdfast/seawater'
import { expect, it } from 'vitest'
import { answerTo, holdsFor } from './answer.ts'
import { readBlank } from './read-blank.ts'
import type { Given, Sum } from './sum.ts'
import { sums } from './sums.ts'

const named = sums.map((sum) => [sum.asks, sum] as const)

function sumNamed(id: string): Sum {
  const found = sums.find((sum) => sum.id === id)
  if (!found) throw new Error(`There is no sum ${id}.`)
  return found
}

const resultOf = (id: string, typed = {}): string => {
  const answer = answerTo(sumNamed(id), typed)
  return answer.is === 'result' ? answer.text : JSON.stringify(answer)
}

it.each(named)('%s has an answer from its starts, and a label of its own for each blank', (_, sum) => {
  expect(resultOf(sum.id)).toMatch(/^[\d.]+ \D/)
  const labels = sum.blanks.map(({ label }) => label)
  expect(new Set(labels).size).toBe(labels.length)
  for (const label of labels) expect(label.length).toBeGreaterThan(4)
  for (const { kind, unit } of sum.blanks)
    if (['temperature', 'volume', 'alkalinity'].includes(kind)) expect(unit).not.toBe('')
  expect(sum.source.length).toBeGreaterThan(5)
})

it.each(named)('%s holds for what it says, and not beyond', (_, sum) => {
  let starts: Given = {}
  for (const blank of sum.blanks) {
    const read = readBlank(blank, String(blank.start), starts)
    if ('value' in read) starts = { ...starts, [blank.input]: read.value }
  }
  expect(Object.keys(starts)).toHaveLength(sum.blanks.length)
  for (const { input, holds, factor = 1 } of sum.blanks) {
    if (holds === undefined) continue
    const isTaken = (value: number) => sum.reckon({ ...starts, [input]: value * factor }).ok
    expect([input, ...holds.map(isTaken)]).toEqual([input, true, true])
    expect([input, isTaken(holds[0] - 0.1), isTaken(holds[1] + 0.1)]).toEqual([input, false, false])
  }
})

it('oxygen beside air is 206.8 µmol/kg at S 35, 25 °C', () => {
  // Garcia & Gordon 1992 (the value from memory); times 1.0233 kg/L and 31.998 g/mol.
  expect(resultOf('oxygen')).toBe('6.77 mg/L')
})

it('a specific gravity is another salinity by another printed temperature', () => {
  // EOS-80: 1.026 is 34.5 at 25/25 °C and 38.5 at 25/4 °C (docs/how-it-works/sea-water.md).
  expect(resultOf('specific-gravity', { SG: '1,026' })).toMatch(/^34\.5 /)
  expect(resultOf('specific-gravity', { t_ref: '4' })).toMatch(/^38\.5 /)
})

it('the conductivity of standard sea water at 15 °C is that of salinity 35', () => {
  // PSS-78: 42.914 mS/cm (UNESCO 1981).
  expect(resultOf('conductivity', { C: '42.914', t: '15' })).toMatch(/^35 /)
})

it('five changes of a fifth leave a third, by 0.8 to the fifth', () => {
  expect(resultOf('changes', { value: '100', fraction: '20 %' })).toBe('32.8 mg/L')
})

it('sodium nitrate is 73 % nitrate, monopotassium phosphate 70 % phosphate', () => {
  // Closed form from atomic masses: 62.005 of 84.995, 94.971 of 136.086.
  expect(resultOf('nitrate by sodium nitrate', { rise: '1', volume_L: '1000' })).toMatch(/^1\.37 g/)
  expect(resultOf('phosphate by monopotassium phosphate', { rise: '1', volume_L: '1000' })).toMatch(
    /^1\.43 g/,
  )
})

it('a kit’s alkalinity is the same water as its µmol in a kilogram', () => {
  // 8 dKH is 2.853 meq/L; at S 35, 25 °C a litre weighs 1.0233 kg (EOS-80), so 2788 µmol of charge in one.
  const told = askWater('aragonite_saturation', { S: 35, t: 25, pH_total: 8.05, TA_umol_kg: 2788 })
  expect(told.ok && `${told.value.toPrecision(3)} times saturated`).toBe(resultOf('aragonite'))
  for (const alkalinity of ['8 dKH', '2.853 meq/L', '142.8 mg/L CaCO3'])
    expect(resultOf('aragonite', { alkalinity })).toBe(resultOf('aragonite'))
  expect(resultOf('aragonite', { alkalinity: '4 dKH' })).not.toBe(resultOf('aragonite'))
  expect(answerTo(sumNamed('aragonite'), { alkalinity: '140 ppm' })).toMatchObject({ is: 'question' })
  expect(answerTo(sumNamed('aragonite'), { alkalinity: '<8 dKH' })).toMatchObject({ inputs: ['alkalinity'] })
})

it('blanks take other units, and ask where a unit is two', () => {
  expect(resultOf('oxygen', { t: '77 °F', S: '35 ppt' })).toBe(resultOf('oxygen'))
  expect(answerTo(sumNamed('salt'), { volume_L: '20 gal' })).toMatchObject({
    is: 'question',
    input: 'volume_L',
    ask: { options: [{ answer: '20 US gal' }, { answer: '20 imp gal' }] },
  })
  expect(answerTo(sumNamed('changes'), { value: '1,500' })).toMatchObject({
    is: 'question',
    ask: { options: [{ answer: '1.500' }, { answer: '1500' }] },
  })
})

it('all that is wrong is said at once, by the names of the blanks', () => {
  const answer = answerTo(sumNamed('mix'), { S1: '350', volume2_L: '60 foo', t: '' })
  expect(answer).toMatchObject({ is: 'wrong', inputs: ['S1', 'volume2_L', 't'] })
  const issues = answer.is === 'wrong' ? answer.issues : []
  expect(issues[0]).toBe(
    'Salinity of the first water: "350" is beyond what the form holds for. Give 0 to 42, such as 35.',
  )
  expect(issues[1]).toContain('Second water: "60 foo" has no unit we know.')
  expect(answerTo(sumNamed('oxygen'), { S: '1.026 SG 25/25 °C' })).toMatchObject({ is: 'wrong' })
  expect(answerTo(sumNamed('top-off'), { S_target: '37' })).toMatchObject({ is: 'wrong', inputs: [] })
})

it('the range stands below the result', () => {
  expect(holdsFor(sumNamed('oxygen'))).toBe(
    'Holds for salinity 0 to 42, temperature of the water −1.9 to 40 °C. ',
  )
  expect(holdsFor(sumNamed('nitrate by sodium nitrate'))).toBe('')
})
