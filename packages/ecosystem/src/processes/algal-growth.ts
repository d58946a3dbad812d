import { surfaceKind } from '@holdfast/facts'
import { bed, outside, standCover, water } from '../accounts/index.ts'
import {
  change,
  concentration,
  fact,
  gathered,
  move,
  type Process,
  process,
  setting,
  state,
  type Transfer,
} from '../declare/index.ts'
import { temperature } from './readings.ts'
import {
  type Growing,
  hoursSetting,
  layerOf,
  lightSetting,
  namedStands,
  ofKind,
  patchKey,
  standFacts,
  standing,
  standKey,
  standTerms,
  stored,
  storesKey,
  tissueOf,
} from './stands.ts'

/** One way of growing: which kinds, how they take ground, and whether they need silicate. */
export interface WayOfGrowing {
  readonly id: string
  readonly title: string
  readonly says: string
  readonly takes: (kind: string) => boolean
  /** Share of what could grow that finds room. */
  readonly room: string
  /** How the cover of a stand changes where it is a thing of its own, or how it follows from the mass. */
  readonly cover: { readonly changes: string } | { readonly follows: string }
  readonly silicate?: true
  /** A crust is one layer of cells on its own stone, with no depth that could shade it. */
  readonly flat?: true
}

const reads = {
  ...standing,
  ...stored.reads,
  temperature,
  light: setting<Growing>(
    ({ stand }) => lightSetting(stand.surface),
    'µmol photons m⁻² s⁻¹',
    ({ surface }) => surface.light_umol_m2_s,
  ),
  hours: setting<Growing>(
    ({ stand }) => hoursSetting(stand.surface),
    'h d⁻¹',
    ({ surface }) => surface.light_h_per_day,
  ),
  halfDay: setting<Growing>('half a day', 'h d⁻¹', () => 12),
  /** Cover of all stands of the same layer, and of the crusts under them. */
  taken: gathered<Growing>('taken', (one) => `${layerOf(one.stand.kind)} ${patchKey(one)}`, '1'),
  crusted: gathered<Growing>('taken', (one) => `crust ${patchKey(one)}`, '1'),
  above: gathered<Growing>('above', standKey, 'g'),
}

const parameters = {
  ...standFacts,
  fastest: fact<Growing>(ofKind('growth'), 'd⁻¹'),
  saturation: fact<Growing>(ofKind('light_saturation'), 'µmol photons m⁻² s⁻¹'),
  leastN: fact<Growing>(ofKind('quota_N_min'), 'µmol g⁻¹'),
  fedN: fact<Growing>(ofKind('quota_N_max'), 'µmol g⁻¹'),
  leastP: fact<Growing>(ofKind('quota_P_min'), 'µmol g⁻¹'),
  fedP: fact<Growing>(ofKind('quota_P_max'), 'µmol g⁻¹'),
  best: fact<Growing>(ofKind('temperature_best'), '°C'),
  onBare: fact<Growing>(ofKind('settles_on_bare'), '1'),
  onCrust: fact<Growing>(ofKind('settles_on_crust'), '1'),
  shade: fact<Growing>('alg.self_shade', 'm² g⁻¹'),
  warming: fact<Growing>('alg.q10', '1'),
  respiration: fact<Growing>('alg.resp', 'd⁻¹'),
  renewal: fact<Growing>(({ surface }) => surfaceKind(surface.kind).transferShare, '1'),
  patchLight: fact<Growing>(({ stand }) => `patch.light.${stand.patch}`, '1'),
  settles: fact<Growing>('algae.settling_rate', 'd⁻¹'),
}

const germling = fact<Growing>('algae.germling_thickness', '1')

const silicon = {
  reads: { silicate: concentration<Growing>(water.silicate, 'Si') },
  parameters: {
    halfSilicate: fact<Growing>('diatom.ks_si', 'µmol L⁻¹'),
    siliconOverCarbon: fact<Growing>('diatom.si_over_c', '1'),
  },
}

/** Growth of the stands by light, warmth and the scarcer of the stores that algal-uptake.ts fills. */
export function algalGrowth({ id, title, says, takes, room, cover, silicate, flat }: WayOfGrowing): Process {
  // A crust is there in full where it is there at all; others begin thin.
  const grown = `speed * room * carbon + settled * ${flat ? '' : 'germling * '}area * fullMass * carbonContent`
  const shells: readonly Transfer<Growing>[] = silicate
    ? [move({ atom: 'Si', from: water.silicate, to: bed.silica, rate: `siliconOverCarbon * (${grown})` })]
    : []
  return process<Growing>({
    id,
    title,
    says,
    source: 'droop-1968',
    slow: true,
    each: (system) => namedStands(system).filter(({ of }) => takes(of.stand.kind)),
    reads: {
      ...reads,
      ...(silicate ? silicon.reads : {}),
      ...('changes' in cover ? { cover: state<Growing>(({ stand }) => standCover(stand), '1') } : {}),
    },
    parameters: { ...parameters, ...(flat ? {} : { germling }), ...(silicate ? silicon.parameters : {}) },
    gathers: {
      taken: { key: (one) => `${layerOf(one.stand.kind)} ${patchKey(one)}`, sum: 'cover', unit: '1' },
      cover: { key: standKey, sum: 'cover', unit: '1' },
      thickness: { key: standKey, sum: 'thickness', unit: '1' },
      tissue: { key: storesKey, sum: 'carbon', unit: 'µmol' },
      washed: { key: storesKey, sum: 'renewal * covered', unit: 'm²' },
    },
    terms: {
      ...standTerms,
      ...('follows' in cover ? { cover: { is: cover.follows, unit: '1' } } : {}),
      thickness: { is: 'mass / (covered * fullMass)', unit: '1' },
      ...stored.terms,
      storeN: { is: 'richN * carbonContent', unit: 'µmol g⁻¹' },
      storeP: { is: 'richP * carbonContent', unit: 'µmol g⁻¹' },
      fed: { is: 'least(droop(storeN, leastN, fedN), droop(storeP, leastP, fedP))', unit: '1' },
      lamp: { is: 'light * patchLight * throughCanopy(shade * above / area)', unit: 'µmol photons m⁻² s⁻¹' },
      // Long days saturate: at most 1.4 times what twelve hours give.
      lit: {
        is: `least(hours / halfDay * lightSaturation(${flat ? 'lamp' : 'selfShaded(lamp, shade * mass / covered)'}, saturation), 1.4)`,
        unit: '1',
      },
      speed: {
        is: `fastest * warmth(warming, temperature, best) * lit * fed${silicate ? ' * monod(silicate, halfSilicate)' : ''}`,
        unit: 'd⁻¹',
      },
      free: { is: 'positive(1 - taken)', unit: '1' },
      settled: {
        is: `settles * lit * free * (onBare * positive(1 - crusted) + onCrust * least(crusted, 1))${silicate ? ' * monod(silicate, halfSilicate)' : ''}`,
        unit: 'd⁻¹',
      },
      room: { is: room, unit: '1' },
    },
    transfers: [
      move({
        atom: 'C',
        from: outside.inorganicCarbon,
        to: tissueOf.C.from,
        rate: grown,
      }),
      move({
        atom: 'C',
        from: tissueOf.C.from,
        to: outside.inorganicCarbon,
        // Slow kinds burn little: at most a quarter of what they can grow by.
        rate: 'least(respiration, fastest / 4) * positive(1 - lit) * carbon',
      }),
      ...shells,
      ...('changes' in cover
        ? [change<Growing>({ state: ({ stand }) => standCover(stand), rate: cover.changes })]
        : []),
    ],
  })
}
