import type { Piece } from '../blank.ts'
import { area, dose, interval, light, media, volume } from '../holds.ts'
import type { Letter, Paragraph, Sentence } from '../paragraph.ts'

type Piecing = (at: number, medium?: unknown) => readonly Piece[]

/** What the letter can say of a machine or a medium, by its kind; the others keep what their file says. */
const said: Readonly<Record<string, Piecing>> = {
  skimmer: (at) => [
    'A skimmer runs, rated for ',
    { path: ['equipment', at, 'rated for'], label: 'Water that the skimmer is rated for', holds: volume },
    '.',
  ],
  'ferric media reactor': (at, medium) => [
    { path: ['equipment', at, 'mass'], label: 'Mass of the medium', holds: media },
    ' of ',
    medium === undefined
      ? 'ferric media'
      : { path: ['equipment', at, 'medium'], label: 'Medium that binds phosphate', holds: binders },
    ' bind phosphate, replaced every ',
    { path: ['equipment', at, 'replaced every'], label: 'Time between changes of media', holds: interval },
    '.',
  ],
  'organic carbon dosing': (at) => [
    'Bacteria are fed ',
    { path: ['equipment', at, 'a day'], label: 'Carbon source dosed a day', holds: dose },
    ' of ',
    { path: ['equipment', at, 'substance'], label: 'Carbon source', holds: substances },
    '.',
  ],
  refugium: (at) => [
    'A refugium grows ',
    { path: ['equipment', at, 'algae'], label: 'Algae of the refugium', holds: cultivated },
    ', ',
    {
      path: ['equipment', at, 'mass'],
      label: 'Mass of algae in the refugium',
      holds: { unit: 'g', usual: [50, 3000] },
    },
    ' of it drained, on ',
    { path: ['equipment', at, 'lit area'], label: 'Lit area of the refugium', holds: area },
    ' under ',
    { path: ['equipment', at, 'light'], label: 'Light of the refugium', holds: light },
    ' for ',
    { path: ['equipment', at, 'hours'], label: 'Hours of light in the refugium', holds: 'count' },
    ' hours a day.',
  ],
  'filter sock': (at) => [
    'A filter sock is changed every ',
    { path: ['equipment', at, 'changed every'], label: 'Time between filter socks', holds: interval },
    '.',
  ],
  'activated carbon': (at) => [
    { path: ['equipment', at, 'mass'], label: 'Mass of activated carbon', holds: media },
    ' of activated carbon are replaced every ',
    { path: ['equipment', at, 'replaced every'], label: 'Time between changes of carbon', holds: interval },
    '.',
  ],
}

const substances = ['ethanol', 'vinegar', 'acetate'].map((value) => ({ value, words: value }))
const binders = ['iron hydroxide', 'activated alumina'].map((value) => ({ value, words: value }))
const cultivated = ['Chaetomorpha', 'Ulva', 'Caulerpa', 'Gracilaria'].map((value) => ({
  value,
  words: value,
}))

/** What a keeper can add, each with its usual numbers. */
const offered: Readonly<Record<string, Readonly<Record<string, unknown>>>> = {
  skimmer: { 'rated for': '600 L' },
  'ferric media reactor': { medium: 'iron hydroxide', mass: '100 g', 'replaced every': '8 weeks' },
  'organic carbon dosing': { substance: 'vinegar', 'a day': '5 mL/d' },
  refugium: {
    algae: 'Chaetomorpha',
    mass: '300 g',
    'lit area': '0.1 m2',
    light: '150 µmol/m2/s',
    hours: 14,
  },
  'filter sock': { 'changed every': '3 d' },
  'activated carbon': { mass: '200 g', 'replaced every': '4 weeks' },
}

/** What takes nutrients out by itself. */
export function equipment({ equipment: all = [] }: Letter): Paragraph {
  return {
    title: 'What runs',
    sentences: all.flatMap((one, i): readonly Sentence[] => {
      const { kind } = one
      if (kind === 'water change') return []
      const removes = { path: ['equipment', i], words: `No ${kind}` }
      const pieces = said[kind]?.(i, 'medium' in one ? one.medium : undefined) ?? [`There is also: ${kind}.`]
      return [{ key: `${kind} ${i}`, pieces, removes }]
    }),
    more: Object.entries(offered)
      .filter(([kind]) => all.every((one) => one.kind !== kind))
      .map(([kind, given]) => ({ words: kind, path: ['equipment', all.length], value: { kind, ...given } })),
  }
}
