import type { SystemText } from '@holdfast/logbook'
import { roughly } from '../../ways/amounts.ts'

/** A starting point: a system as many have it. Its numbers are common practice, and unsaid until they are said. */
export interface Start {
  readonly key: string
  readonly title: string
  readonly says: () => string
  readonly document: Omit<SystemText, 'timeZone'>
}

const usualWater = {
  'source water': { kind: 'deionised' },
  'salt mix': { kind: 'synthetic salt' },
  salinity: '35 psu',
  temperature: '25.5 °C',
} as const

const surfaceOf = (
  id: string,
  kind: SystemText['surfaces'][number]['kind'],
  area: string,
  light: string,
) => ({
  id,
  vessel: 'display',
  kind,
  area,
  light,
  hours: 9,
  age: '12 months',
})

export const starts: readonly Start[] = [
  {
    key: 'small',
    title: 'A small reef in one tank',
    says: () => `Some ${roughly('volume', 60)}, live rock, a few fish, water changed every week.`,
    document: {
      name: 'Small reef',
      vessels: [{ id: 'display', kind: 'display', water: '50 L', length: '45 cm' }],
      surfaces: [
        surfaceOf('rock face', 'rock_face', '0.3 m2', '150 µmol/m2/s'),
        surfaceOf('rock underside', 'rock_underside', '0.3 m2', '10 µmol/m2/s'),
        surfaceOf('glass', 'glass', '0.5 m2', '60 µmol/m2/s'),
        surfaceOf('sand', 'sand', '0.15 m2', '90 µmol/m2/s'),
      ],
      rock: [{ kind: 'cured live', mass: '7 kg', age: '12 months' }],
      sand: { mass: '5 kg', depth: '2 cm' },
      ...usualWater,
      evaporation: '0.7 L/d',
      feeds: [{ kind: 'pellet', amount: '0.4 g/d' }],
      equipment: [{ kind: 'water change', volume: '6 L', every: '1 week' }],
      animals: [
        { kind: 'fish', count: 2, mass: '6 g', role: 'fish' },
        {
          kind: 'banded trochus snail',
          taxon: 'Trochus histrio',
          count: 3,
          mass: '9 g',
          role: 'grazer',
        },
      ],
      corals: { kind: 'soft-large-polyped', area: '0.08 m2' },
      algae: [{ kind: 'film_green', surface: 'glass', cover: 0.05 }],
    },
  },
  {
    key: 'middle',
    title: 'A mixed reef with a sump',
    says: () => `Some ${roughly('volume', 300)}, a skimmer, dry rock, water changed every other week.`,
    document: {
      name: 'Mixed reef',
      vessels: [
        { id: 'display', kind: 'display', water: '240 L', length: '120 cm' },
        { id: 'sump', kind: 'sump', water: '60 L' },
      ],
      flow: [{ between: ['display', 'sump'], 'each way': '1800 L/h' }],
      surfaces: [
        surfaceOf('rock face', 'rock_face', '1.1 m2', '180 µmol/m2/s'),
        surfaceOf('rock underside', 'rock_underside', '1.2 m2', '12 µmol/m2/s'),
        surfaceOf('glass', 'glass', '1.3 m2', '80 µmol/m2/s'),
        surfaceOf('sand', 'sand', '0.5 m2', '110 µmol/m2/s'),
      ],
      rock: [{ kind: 'quarried dry', mass: '25 kg', age: '12 months' }],
      sand: { mass: '20 kg', depth: '3 cm' },
      ...usualWater,
      evaporation: '4 L/d',
      feeds: [
        { kind: 'pellet', amount: '1.5 g/d' },
        { kind: 'mysis', amount: '4 g/d' },
      ],
      equipment: [
        { kind: 'water change', volume: '30 L', every: '2 weeks' },
        { kind: 'skimmer', 'rated for': '400 L' },
      ],
      animals: [
        { kind: 'fish', count: 6, mass: '12 g', role: 'fish' },
        {
          kind: 'banded trochus snail',
          taxon: 'Trochus histrio',
          count: 12,
          mass: '9 g',
          role: 'grazer',
        },
      ],
      corals: { kind: 'mixed', area: '0.3 m2' },
      algae: [
        { kind: 'hair_green', surface: 'rock face', cover: 0.03 },
        { kind: 'film_green', surface: 'glass', cover: 0.05 },
      ],
    },
  },
  {
    key: 'large',
    title: 'A large reef with a refugium',
    says: () =>
      `Some ${roughly('volume', 900)}, algae grown under a lamp of their own, media against phosphate.`,
    document: {
      name: 'Large reef',
      vessels: [
        { id: 'display', kind: 'display', water: '700 L', length: '180 cm' },
        { id: 'sump', kind: 'sump', water: '200 L' },
      ],
      flow: [{ between: ['display', 'sump'], 'each way': '5000 L/h' }],
      surfaces: [
        surfaceOf('rock face', 'rock_face', '2.6 m2', '220 µmol/m2/s'),
        surfaceOf('rock underside', 'rock_underside', '2.8 m2', '12 µmol/m2/s'),
        surfaceOf('glass', 'glass', '2.4 m2', '90 µmol/m2/s'),
        surfaceOf('sand', 'sand', '1.2 m2', '130 µmol/m2/s'),
      ],
      rock: [{ kind: 'cured live', mass: '70 kg', age: '12 months' }],
      sand: { mass: '60 kg', depth: '3 cm' },
      ...usualWater,
      evaporation: '11 L/d',
      feeds: [
        { kind: 'pellet', amount: '4 g/d' },
        { kind: 'mysis', amount: '12 g/d' },
        { kind: 'nori', amount: '1 g/d' },
      ],
      equipment: [
        { kind: 'water change', volume: '90 L', every: '2 weeks' },
        { kind: 'skimmer', 'rated for': '1200 L' },
        { kind: 'ferric media reactor', mass: '200 g', 'replaced every': '8 weeks' },
        {
          kind: 'refugium',
          vessel: 'sump',
          algae: 'Chaetomorpha',
          mass: '800 g',
          'lit area': '0.25 m2',
          light: '180 µmol/m2/s',
          hours: 14,
        },
      ],
      animals: [
        { kind: 'fish', count: 14, mass: '25 g', role: 'fish' },
        {
          kind: 'banded trochus snail',
          taxon: 'Trochus histrio',
          count: 30,
          mass: '9 g',
          role: 'grazer',
        },
      ],
      corals: { kind: 'small-polyped', area: '1 m2' },
      algae: [
        { kind: 'hair_green', surface: 'rock face', cover: 0.02 },
        { kind: 'film_green', surface: 'glass', cover: 0.05 },
      ],
    },
  },
]
