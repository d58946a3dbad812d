/** The first day of the invented log, and the last. */
export const firstDate = '2026-03-08'
export const lastDate = '2026-11-08'

/** What the system file of the invented tank says, as a keeper would write it. */
export const systemDocument = {
  $schema: '../../packages/logbook/schema/system-file.schema.json',
  id: 'reef-90',
  name: 'Reef of 90 L (invented)',
  timeZone: 'Europe/Berlin',
  vessels: [{ id: 'display', kind: 'display', water: '90 L', glass: '110 L', length: '60 cm' }],
  surfaces: [
    {
      id: 'rock face',
      vessel: 'display',
      kind: 'rock_face',
      area: '0.4 m2',
      light: '60 µmol/m2/s',
      hours: 8,
      age: '500 d',
    },
    {
      id: 'rock underside',
      vessel: 'display',
      kind: 'rock_underside',
      area: '0.45 m2',
      light: '6 µmol/m2/s',
      hours: 8,
      age: '500 d',
    },
    {
      id: 'glass',
      vessel: 'display',
      kind: 'glass',
      area: '0.6 m2',
      light: '40 µmol/m2/s',
      hours: 8,
      age: '500 d',
      'hand cleaned every': '3 d',
    },
    {
      id: 'sand',
      vessel: 'display',
      kind: 'sand',
      area: '0.2 m2',
      light: '40 µmol/m2/s',
      hours: 8,
      age: '500 d',
    },
  ],
  rock: [{ kind: 'cured live', mass: '9 kg', age: '500 d' }],
  sand: { mass: '7 kg', depth: '2 cm' },
  'source water': { kind: 'RO/DI', nitrate: '0 mg/L NO3', phosphate: '0 mg/L PO4' },
  'salt mix': { nitrate: '0.2 mg/L NO3', phosphate: '0.01 mg/L PO4' },
  salinity: '35 psu',
  temperature: '25 °C',
  pH: 8.1,
  evaporation: '1.2 L/d',
  feeds: [
    { kind: 'dry pellet', amount: '0.25 g/d', nitrogen: '7.2 %', phosphorus: '1.2 %' },
    {
      kind: 'frozen mysids',
      amount: '0.8 g/d',
      nitrogen: '0.9 %',
      phosphorus: '0.1 %',
      'dry matter': '11 %',
    },
  ],
  equipment: [
    { kind: 'water change', volume: '10 L', every: '1 week', first: '2026-03-15' },
    { kind: 'filter floss', 'changed every': '3 d' },
    { kind: 'heater' },
    { kind: 'automatic top-off' },
  ],
  animals: [
    { kind: 'small reef fish', count: 2, mass: '6 g', role: 'fish' },
    { kind: 'banded trochus snail', taxon: 'Trochus histrio', count: 2, mass: '6 g', role: 'grazer' },
  ],
  corals: { kind: 'mixed', area: '0.08 m2' },
  algae: [
    { kind: 'hair_green', surface: 'rock face', cover: 0.03 },
    { kind: 'hair_green', surface: 'glass', cover: 0.01 },
  ],
}
