import { bed, bodiesOf, livingOf, newcomersOf, outside } from '../accounts/index.ts'
import { carry, change, move, process, setting, state } from '../declare/index.ts'
import { bodyFacts, living, type Member, namedCrew } from '../processes/crew.ts'

/** Settings of animals that come and go, by taxon. */
export const arrivingSetting = (taxon: string): string => `arriving ${taxon}`
export const arrivingMassSetting = (taxon: string): string => `arriving mass ${taxon}`
export const leavingSetting = (taxon: string): string => `leaving ${taxon}`
/** 1 where the bodies of the dead were taken out, or the animals given away. */
export const takenOutSetting = 'bodies taken out'

export const crewArrives = process<Member>({
  id: 'crew arrives',
  title: 'Grazers added',
  says: 'A grazer brings the nitrogen and phosphorus of its body, and is a newcomer for some weeks.',
  source: 'sterner-george-2000',
  event: true,
  each: namedCrew,
  reads: {
    arriving: setting(
      ({ taxon }) => arrivingSetting(taxon),
      '1',
      () => 0,
    ),
    mass: setting(
      ({ taxon }) => arrivingMassSetting(taxon),
      'g',
      () => 0,
    ),
  },
  parameters: bodyFacts,
  transfers: [
    move({ atom: 'N', from: outside.animals, to: ({ taxon }) => bodiesOf(taxon), rate: 'mass * bodyN' }),
    move({ atom: 'P', from: outside.animals, to: ({ taxon }) => bodiesOf(taxon), rate: 'mass * bodyP' }),
    move({ atom: 'C', from: outside.animals, to: ({ taxon }) => bodiesOf(taxon), rate: 'mass * bodyC' }),
    change({ state: ({ taxon }) => livingOf(taxon), rate: 'arriving' }),
    change({ state: ({ taxon }) => newcomersOf(taxon), rate: 'arriving' }),
  ],
})

export const crewLeaves = process<Member>({
  id: 'crew leaves',
  title: 'Grazers lost',
  says: 'The body of a grazer that died stays in the system and rots, unless it was taken out.',
  source: 'mass balance',
  event: true,
  each: namedCrew,
  reads: {
    leaving: setting(
      ({ taxon }) => leavingSetting(taxon),
      '1',
      () => 0,
    ),
    takenOut: setting(takenOutSetting, '1', () => 0),
    living,
    newcomers: state(({ taxon }) => newcomersOf(taxon), '1'),
  },
  parameters: {},
  terms: { gone: { is: 'least(part(leaving, living), 1)', unit: '1' } },
  transfers: [
    carry({
      from: ({ taxon }) => bodiesOf(taxon),
      to: outside.animals,
      atoms: ['N', 'P', 'C'],
      rate: 'gone * takenOut',
    }),
    carry({
      from: ({ taxon }) => bodiesOf(taxon),
      to: bed.fast,
      atoms: ['N', 'P', 'C'],
      rate: 'gone * (1 - takenOut)',
    }),
    change({ state: ({ taxon }) => livingOf(taxon), rate: '-gone * living' }),
    change({ state: ({ taxon }) => newcomersOf(taxon), rate: '-gone * newcomers' }),
  ],
})
