/** The first day of the invented log, and the last. */
export const firstDate = '2025-11-10'
export const lastDate = '2026-11-08'

/** What the system file of the invented reef says, as a keeper would write it. */
export const systemDocument = {
  $schema: '../../packages/logbook/schema/system-file.schema.json',
  id: 'reef-600',
  name: 'Reef of 600 L (invented)',
  timeZone: 'Europe/Berlin',
  vessels: [
    { id: 'display', kind: 'display', water: '480 L', glass: '560 L', length: '150 cm' },
    { id: 'sump', kind: 'sump', water: '120 L', glass: '200 L' },
  ],
  flow: [{ between: ['display', 'sump'], 'each way': '3000 L/h' }],
  surfaces: [
    {
      id: 'rock face',
      vessel: 'display',
      kind: 'rock_face',
      area: '1.1 m2',
      light: '200 µmol/m2/s',
      hours: 9,
      age: '900 d',
    },
    {
      id: 'rock underside',
      vessel: 'display',
      kind: 'rock_underside',
      area: '0.9 m2',
      light: '12 µmol/m2/s',
      hours: 9,
      age: '900 d',
    },
    {
      id: 'glass',
      vessel: 'display',
      kind: 'glass',
      area: '1.8 m2',
      light: '90 µmol/m2/s',
      hours: 9,
      age: '900 d',
      'hand cleaned every': '4 d',
    },
    {
      id: 'sand',
      vessel: 'display',
      kind: 'sand',
      area: '0.9 m2',
      light: '120 µmol/m2/s',
      hours: 9,
      age: '900 d',
    },
  ],
  rock: [{ kind: 'cured live', mass: '45 kg', age: '900 d' }],
  sand: { mass: '35 kg', depth: '3 cm' },
  'source water': { kind: 'RO/DI', nitrate: '0 mg/L NO3', phosphate: '0 mg/L PO4' },
  'salt mix': { nitrate: '0.2 mg/L NO3', phosphate: '0.01 mg/L PO4' },
  salinity: '35 psu',
  temperature: '25.5 °C',
  pH: 8.1,
  evaporation: '8 L/d',
  feeds: [
    { kind: 'dry pellet', amount: '2.5 g/d', nitrogen: '7.2 %', phosphorus: '1.2 %' },
    {
      kind: 'frozen mysids',
      amount: '7.5 g/d',
      nitrogen: '0.9 %',
      phosphorus: '0.1 %',
      'dry matter': '11 %',
    },
  ],
  equipment: [
    { kind: 'water change', volume: '60 L', every: '2 weeks', first: '2025-11-16' },
    { kind: 'skimmer', 'rated for': '800 L' },
    { kind: 'ferric media reactor', mass: '80 g', flow: '100 L/h' },
    { kind: 'heater', watts: 300 },
    { kind: 'automatic top-off' },
  ],
  animals: [
    { kind: 'mixed reef fish', count: 8, mass: '15 g', role: 'fish' },
    { kind: 'banded trochus snail', taxon: 'Trochus histrio', count: 25, mass: '9 g', role: 'grazer' },
    { kind: 'tuxedo urchin', taxon: 'Mespilia globulus', count: 1, mass: '45 g', role: 'grazer' },
    { kind: 'bicolor blenny', taxon: 'Ecsenius bicolor', count: 1, mass: '6 g', role: 'grazer' },
    { kind: 'tail-spot blenny', taxon: 'Ecsenius stigmatura', count: 1, mass: '2.5 g', role: 'grazer' },
  ],
  corals: { kind: 'mixed', area: '0.6 m2' },
  algae: [
    { kind: 'hair_green', surface: 'rock face', cover: 0.04 },
    { kind: 'hair_green', surface: 'glass', cover: 0.01 },
  ],
}
