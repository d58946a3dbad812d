import { fact } from '@holdfast/facts'
import { expect, test } from 'vitest'
import { moved, nothingUnexplained, run } from '../testing/run.ts'
import { box, plate } from '../testing/systems.ts'

/** µmol of phosphorus per mol of chalk that corals lay down in water of so much phosphate, mg PO4/L. */
function inChalk(phosphate_mg_L: number): { readonly perMol: number; readonly phosphate: number } {
  const area_m2 = 0.1
  const days = 1
  const { ledger, concentrations } = run({
    system: {
      ...box,
      surfaces: [plate],
      corals: { kind: 'stony', area_m2 },
    },
    days,
    samples: [0, 0.25, 0.5, 0.75, 1],
    opening: { nitrate_mg_L: 5, phosphate_mg_L },
    facts: nothingUnexplained,
  })
  const course = concentrations('water.phosphate/P')
  const taken = moved(ledger, { process: 'calcification', atom: 'P' })
  return {
    perMol: taken / (area_m2 * fact('coral.chalk').typical * days),
    phosphate: course.reduce((sum, value) => sum + value, 0) / course.length,
  }
}

// LaVigne et al. 2010 (abstract read): in Porites lobata 21.1 ± 2.4 µmol P per mol Ca for each µmol/kg of phosphate,
// linear; LaVigne et al. 2008 (abstract read): 118 µmol per mol in Pavona gigantea where upwelling brings about 1 µmol/kg (memory).
test('chalk takes phosphorus as skeletons of corals were found to, in proportion to the water', () => {
  const lean = inChalk(0.02)
  const rich = inChalk(0.1)
  expect(lean.perMol / lean.phosphate).toBeGreaterThan(21.1 - 2 * 2.4)
  expect(rich.perMol).toBeLessThan(118)
  expect(rich.perMol / rich.phosphate).toBeCloseTo(lean.perMol / lean.phosphate, 0)
})
