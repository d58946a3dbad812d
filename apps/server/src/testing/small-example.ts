import { writeFileSync } from 'node:fs'
import { join } from 'node:path'
import { temporaryFolder } from '@holdfast/testing'

/** An invented small reef, as a system file. */
const system = {
  id: 'example-reef',
  name: 'Example reef',
  timeZone: 'Europe/Berlin',
  vessels: [{ id: 'display', kind: 'display', water: '60 L' }],
  surfaces: [
    {
      id: 'rock face',
      vessel: 'display',
      kind: 'rock_face',
      area: '0.3 m2',
      light: '150 µmol/m2/s',
      hours: 9,
      age: '300 d',
    },
  ],
  'source water': { nitrate: '0 mg/L NO3', phosphate: '0 mg/L PO4' },
  'salt mix': { nitrate: '0 mg/L NO3', phosphate: '0 mg/L PO4' },
  salinity: '35 psu',
  temperature: '25 °C',
  evaporation: '1 L/d',
  feeds: [{ kind: 'dry pellet', amount: '0.5 g/d', nitrogen: '7 %', phosphorus: '1.2 %' }],
}

const said = { v: 1, precision: 'day', madeAt: '2026-03-01T12:00:00Z', by: 'example', device: 'example' }

/** Entries as a file of the examples holds them; workspace and system are set when they are put in. */
const log = [
  {
    ...said,
    id: '018f3a1e-7c00-7000-8000-000000000001',
    workspace: 'example',
    system: 'example-reef',
    kind: 'reading',
    at: '2026-02-01',
    body: { quantity: 'nitrate', value: 5, belowDetection: false, text: '5', unit: 'mg/L', form: 'NO3' },
  },
  {
    ...said,
    id: '018f3a1e-7c00-7000-8000-000000000002',
    workspace: 'example',
    system: 'example-reef',
    kind: 'water-change',
    at: '2026-02-15',
    body: { volume_L: 6, text: '' },
  },
]

/** A folder like examples/reef-600, small; `changes` go into its system file. */
export function smallExample(changes: Readonly<Record<string, unknown>> = {}): string {
  const folder = temporaryFolder()
  writeFileSync(join(folder, 'system.json'), JSON.stringify({ ...system, ...changes }))
  writeFileSync(join(folder, 'log.json'), JSON.stringify(log))
  return folder
}
