/** An invented reef with all that the ledger tells apart, as a system file. */
export const hall = {
  id: 'hall',
  name: 'Reef in the hall',
  timeZone: 'Europe/Berlin',
  vessels: [
    { id: 'display', kind: 'display', water: '450 L' },
    { id: 'sump', kind: 'sump', water: '80 L' },
  ],
  flow: [{ between: ['display', 'sump'], 'each way': '3000 L/h' }],
  surfaces: [
    {
      id: 'rock face',
      vessel: 'display',
      kind: 'rock_face',
      area: '2 m2',
      light: '200 µmol/m2/s',
      hours: 9,
      age: '800 d',
    },
  ],
  rock: [{ kind: 'cured live', mass: '45 kg', age: '800 d' }],
  sand: { mass: '20 kg', depth: '3 cm' },
  'source water': { nitrate: '1 mg/L NO3', phosphate: '0.02 mg/L PO4' },
  'salt mix': { nitrate: '0 mg/L NO3', phosphate: '0 mg/L PO4' },
  salinity: '35 psu',
  temperature: '25.5 °C',
  evaporation: '8 L/d',
  feeds: [{ kind: 'dry pellet', amount: '4 g/d', nitrogen: '7.2 %', phosphorus: '1.2 %' }],
  equipment: [
    { kind: 'water change', volume: '60 L', every: '14 d' },
    { kind: 'skimmer', air: '300 L/h' },
    { kind: 'ferric media reactor', mass: '200 g', placed: '2026-01-10' },
  ],
  animals: [{ kind: 'trochus snail', taxon: 'Trochus histrio', count: 20, role: 'grazer' }],
  corals: { kind: 'mixed', area: '0.5 m2' },
  algae: [{ kind: 'hair_green', surface: 'rock face', cover: 0.05 }],
}
