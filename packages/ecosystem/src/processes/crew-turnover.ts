import { mortalityId, needId } from '@holdfast/facts'
import { bed, bodiesOf, hungerOf, livingOf, newcomersOf } from '../accounts/index.ts'
import { carry, change, fact, gathered, process, setting, state } from '../declare/index.ts'
import { appetite } from './appetite.ts'
import { type Member, namedCrew } from './crew.ts'
import { growthForm } from './stands.ts'

/**
 * Hunger builds up where what is eaten and what is fed by hand fall short of need, and raises losses; who came
 * lately is lost more often. The dead stay in the system and rot, until someone takes them out.
 */
export const crewTurnover = process<Member>({
  id: 'crew-turnover',
  title: 'Hunger and death of grazers',
  says: 'Grazers go hungry where food lacks, and die by age, by hunger and in their first weeks; what is not taken out rots.',
  source: 'keepers-practice',
  slow: true,
  each: namedCrew,
  reads: {
    ...appetite.reads,
    relish: gathered('relish', ({ taxon }) => taxon, 'g'),
    /** Mouths without a film to be seen live on films that nobody describes. */
    unseen: setting('films not described', '1', ({ system }) =>
      system.algae.some(({ kind }) => growthForm(kind) === 'film') ? 0 : 1,
    ),
    needs: gathered('needs', () => 'crew', 'g d⁻¹'),
    newcomers: state(({ taxon }) => newcomersOf(taxon), '1'),
    hunger: state(({ taxon }) => hungerOf(taxon), '1'),
    fedByHand: setting('mouths fed', '1', ({ system }) =>
      system.feeds.some(({ g_per_day }) => g_per_day > 0) ? 1 : 0,
    ),
  },
  parameters: {
    ...appetite.parameters,
    need: fact(({ taxon }) => needId(taxon), 'g d⁻¹'),
    mortality: fact(({ taxon }) => mortalityId(taxon), 'd⁻¹'),
    prepared: fact(({ animal }) => `crew.prepared.${animal.appetite}`, '1'),
    reserve: fact('crew.reserve', 'd'),
    unseenFood: fact('crew.unseen_food', 'g m⁻² d⁻¹'),
    recovers: fact('crew.recovers', 'd⁻¹'),
    starvation: fact('crew.starvation', 'd⁻¹'),
    firstMonth: fact('crew.first_month_loss', '1'),
    settlesIn: fact('crew.settles_in', 'd'),
  },
  gathers: { needs: { key: () => 'crew', sum: 'living * need', unit: 'g d⁻¹' } },
  terms: {
    ...appetite.terms,
    // All mouths share what nobody sees by what they need.
    foraged: { is: 'unseen * unseenFood * reachable * part(living * need, needs)', unit: 'g d⁻¹' },
    eaten: { is: 'intake * part(relish, food) + foraged', unit: 'g d⁻¹' },
    // Food relative to need; where nobody is left nobody needs any.
    fed: { is: 'part(eaten, living * need) + prepared * fedByHand', unit: '1' },
    // Newcomers settle in at 1 / settlesIn; this rate beside it loses the share that the first month takes.
    early: { is: 'firstMonth / (1 - firstMonth) / settlesIn', unit: 'd⁻¹' },
    steady: { is: 'mortality + starvation * positive(2 * hunger - 1)', unit: 'd⁻¹' },
    lost: { is: 'steady + early * least(part(newcomers, living), 1)', unit: 'd⁻¹' },
  },
  transfers: [
    carry({ from: ({ taxon }) => bodiesOf(taxon), to: bed.fast, atoms: ['N', 'P', 'C'], rate: 'lost' }),
    change({ state: ({ taxon }) => livingOf(taxon), rate: '-lost * living' }),
    change({
      state: ({ taxon }) => newcomersOf(taxon),
      rate: '-(steady + early + 1 / settlesIn) * newcomers',
    }),
    change({
      state: ({ taxon }) => hungerOf(taxon),
      // Short of need the reserve runs down; only what is eaten beyond need fills it again.
      rate: 'positive(1 - fed) * positive(1 - hunger) / reserve - recovers * least(positive(fed - 1), 1) * hunger',
    }),
  ],
})
