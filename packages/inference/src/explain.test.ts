import { assemble, type System } from '@holdfast/ecosystem'
import { facts } from '@holdfast/facts'
import { expect, test } from 'vitest'
import { cited } from './cited.ts'
import { explanations } from './explain.ts'

// An invented tank of 100 L with nothing alive in it.
const tank: System = {
  id: 'tank',
  name: 'Tank of 100 L',
  timeZone: 'UTC',
  vessels: [{ id: 'display', kind: 'display', volume_L: 100 }],
  flow: [],
  surfaces: [],
  rock: [],
  source_water: { NO3_mg_L: 1, PO4_mg_L: 0 },
  salt_mix: { NO3_mg_L: 0, PO4_mg_L: 0 },
  salinity_psu: 35,
  temperature_C: 25.5,
  evaporation_L_per_day: 2,
  feeds: [{ kind: 'dry pellet', g_per_day: 0.4, N_mass_fraction: 0.072, P_mass_fraction: 0.012 }],
  equipment: [{ kind: 'water change', volume_L: 10, every_days: 7 }],
  animals: [],
  algae: [],
}

const known = explanations(assemble(tank))

test('what an entry will say keeps its name in the formula, and what the system says is put in', () => {
  const change = known.find(({ process }) => process === 'water change')
  const formulas = change?.formulas ?? []
  expect(formulas).toContainEqual({
    formula: 'N = changed * sourceNitrate',
    // 1 mg/L NO3 is 16.1 µmol/L, by a molar mass of 62.005 g/mol.
    withValues: 'N = changed * 16.1',
    moves: ['N'],
  })
  expect(formulas.find(({ formula }) => formula.startsWith('N, P'))?.withValues).toContain('changed / 100')
})

test('each formula says whose atoms it gives, so that a figure of phosphorus shows none of nitrogen', () => {
  for (const { formulas } of known)
    for (const { formula, moves } of formulas)
      if (moves) expect(formula.split(' = ')[0]?.split(', ')).toEqual(moves)
})

test('a source without a year is cited without one', () => {
  for (const { source } of facts()) expect(cited(source)).not.toMatch(/null|undefined/)
})
