import { expect, test } from 'vitest'
import { type Process, process } from '../src/declare/index.ts'
import { events } from '../src/events/index.ts'
import { waterChange } from '../src/events/water-change.ts'
import * as forms from '../src/forms/index.ts'
import { formRules } from '../src/forms/rules.ts'
import { ammoniaOxidation } from '../src/processes/ammonia-oxidation.ts'
import { ferricMedia } from '../src/processes/ferric-media.ts'
import { processes } from '../src/processes/index.ts'
import { nitrifierDecay } from '../src/processes/nitrifier-decay.ts'
import { topOff } from '../src/processes/top-off.ts'
import { reef } from '../src/testing/systems.ts'
import { checkUnits, unitIssueText } from './units.ts'

const said = (...declarations: readonly Process[]): readonly string[] =>
  checkUnits(declarations, [reef]).map(unitIssueText)

test('the units of every formula of every process and event agree', () => {
  expect(said(...processes, ...events)).toEqual([])
})

test('every form has a rule for its units, and every rule has its form', () => {
  expect(Object.keys(formRules).sort()).toEqual(Object.keys(forms).sort())
})

test('a fact read in mmol where the formula wants µmol is found by its factor of a thousand', () => {
  const doctored = process({
    ...ferricMedia,
    parameters: { ...ferricMedia.parameters, load: { fact: 'fe.load_ref', unit: 'mmol g⁻¹' } },
  })
  const issues = said(doctored)
  expect(issues).toHaveLength(2)
  expect(issues[0]).toContain('ferric-media: term wanted')
  expect(issues[0]).toContain('expected 1000 × µmol, found µmol (unlike-units)')
})

test('a concentration added to a rate is named with both units', () => {
  const doctored = process({
    ...topOff,
    transfers: topOff.transfers.map((each) =>
      each.kind === 'move' ? { ...each, rate: 'evaporation * sourceNitrate + sourcePhosphate' } : each,
    ),
  })
  const issues = said(doctored)
  expect(issues).toHaveLength(3)
  expect(issues[0]).toContain('top-off: transfer 1 (move)')
  expect(issues[0]).toContain('expected µmol d⁻¹, found 1000 × µmol m⁻³ (unlike-units)')
})

test('a rate that is an amount, a carry without its day and a share with a unit are all told at once', () => {
  const rateless = process({
    ...topOff,
    transfers: topOff.transfers.map((each) =>
      each.kind === 'move' ? { ...each, rate: 'sourceNitrate' } : each,
    ),
  })
  const dayless = process({
    ...nitrifierDecay,
    transfers: nitrifierDecay.transfers.map((each) =>
      each.kind === 'carry' ? { ...each, rate: 'q10(warming, temperature)' } : each,
    ),
  })
  const unshared = process({
    ...ammoniaOxidation,
    transfers: ammoniaOxidation.transfers.map((each) =>
      each.kind === 'split'
        ? {
            ...each,
            into: each.into.map((part) => (part.share === 'rest' ? part : { ...part, share: 'substrate' })),
          }
        : each,
    ),
  })
  const issues = said(rateless, dayless, unshared)
  expect(issues.map((issue) => issue.replace(/ ".*?"/, ''))).toEqual([
    'top-off: transfer 1 (move): expected µmol d⁻¹, found 1000 × µmol m⁻³ (wrong-unit).',
    'top-off: transfer 2 (move): expected µmol d⁻¹, found 1000 × µmol m⁻³ (wrong-unit).',
    'top-off: transfer 3 (move): expected µmol d⁻¹, found 1000 × µmol m⁻³ (wrong-unit).',
    'nitrifier-decay: transfer 1 (carry): expected d⁻¹, found 1 (wrong-unit).',
    'ammonia-oxidation: transfer 1 (split), share: expected 1, found 1000 × µmol m⁻³ (wrong-unit).',
  ])
})

test('an event that gives a rate in place of an amount is refused', () => {
  const doctored = process({
    ...waterChange,
    reads: {
      ...waterChange.reads,
      changed: { read: 'setting', id: 'water change volume', unit: 'L d⁻¹', value: () => 0 },
    },
  })
  const issues = said(doctored)
  expect(issues.some((issue) => issue.includes('expected µmol, found µmol d⁻¹'))).toBe(true)
  expect(issues.some((issue) => issue.includes('expected 1, found d⁻¹'))).toBe(true)
})

test('one setting meant in two units by two processes is found', () => {
  const inMillilitres = process({
    ...topOff,
    reads: {
      ...topOff.reads,
      evaporation: { read: 'setting', id: 'ferric media flow', unit: 'mL d⁻¹', value: () => 0 },
    },
  })
  expect(said(ferricMedia, inMillilitres)).toContain(
    'top-off: read evaporation (setting ferric media flow): expected L d⁻¹, found mL d⁻¹ (two-units).',
  )
})

test('warming counted in kelvin is refused where a form wants degrees Celsius', () => {
  const inKelvin = process({
    ...ammoniaOxidation,
    reads: {
      ...ammoniaOxidation.reads,
      temperature: { read: 'setting', id: 'temperature', unit: 'K', value: () => 298 },
    },
  })
  expect(said(inKelvin).join(' ')).toContain('ammonia-oxidation: term capacity')
})
