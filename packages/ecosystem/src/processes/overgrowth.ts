import { algaeKind, algaeKinds } from '@holdfast/facts'
import { water } from '../accounts/index.ts'
import { change, fact, gathered, process, setting } from '../declare/index.ts'
import type { System } from '../system.ts'
import { temperature } from './readings.ts'
import {
  covering,
  type Growing,
  hoursSetting,
  layerOf,
  leaves,
  lightSetting,
  namedStands,
  ofKind,
  ownCover,
  spreads,
  standFacts,
  standing,
  standKey,
  standsOf,
  stored,
} from './stands.ts'

/** A stand over another on the same patch: it overgrows it, or is so much taller that it shades it, or both. */
interface Over extends Growing {
  readonly under: Growing
}

/** Words of the tables for groups of kinds. */
const groups: Readonly<Record<string, readonly string[]>> = {
  film: ['film_diatom', 'film_green'],
  'coralline (thin)': ['coralline'],
}

/** Does the one kind lie over or shade out the other when it wins. */
export function overgrows(kind: string, other: string): boolean {
  const known = new Set(algaeKinds().map(({ key }) => key))
  const list = algaeKind(kind).overgrows.flatMap((word) => groups[word] ?? (known.has(word) ? [word] : []))
  return list.includes(other)
}

/** The one that is taller by half or more takes the other's light; a crust is what the others stand on. */
export const shades = (kind: string, other: string): boolean =>
  layerOf(kind) === 'upright' && algaeKind(kind).canopyHeight >= 1.5 * algaeKind(other).canopyHeight

const kindsOf = ({ stand, under }: Over): readonly [over: string, under: string] => [
  stand.kind,
  under.stand.kind,
]

function pairsOf(system: System): readonly { readonly name: string; readonly of: Over }[] {
  const stands = standsOf(system)
  return stands.flatMap((over) =>
    stands.flatMap((under) => {
      const { stand } = over
      const other = under.stand
      if (stand.surface !== other.surface || stand.patch !== other.patch || stand.kind === other.kind)
        return []
      const name = `${stand.kind} over ${other.kind} on ${stand.surface}, ${stand.patch}`
      return overgrows(stand.kind, other.kind) || shades(stand.kind, other.kind)
        ? [{ name, of: { ...over, under } }]
        : []
    }),
  )
}

const flag = (name: string, holds: (over: string, under: string) => boolean) =>
  setting<Over>(
    (over) => kindsOf(over).join(` ${name} `),
    '1',
    (over) => (holds(...kindsOf(over)) ? 1 : 0),
  )

const light = {
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
}

const winning = {
  fastest: fact<Growing>(ofKind('growth'), 'd⁻¹'),
  saturation: fact<Growing>(ofKind('light_saturation'), 'µmol photons m⁻² s⁻¹'),
  best: fact<Growing>(ofKind('temperature_best'), '°C'),
  warming: fact<Growing>('alg.q10', '1'),
  patchLight: fact<Growing>(({ stand }) => `patch.light.${stand.patch}`, '1'),
  pushes: fact<Growing>('algae.overgrowth_share', '1'),
}

/** Ground that a stand takes in a day, as share of what others hold, by what it could grow in the light of the place. */
const push = {
  is: 'pushes * fastest * warmth(warming, temperature, best) * least(hours / halfDay * lightSaturation(light * patchLight, saturation), 1.4) * (least(thickness, 1) * cover)',
  unit: 'd⁻¹',
}

/** Sums over the pairs of a patch, so that what comes of them is worked out once for each stand. */
export const standingOver = process<Over>({
  id: 'standing-over',
  title: 'Who stands over whom',
  says: 'Taller kinds shade lower ones, and kinds that lie over others press on them by how fast and how densely they stand.',
  source: 'holdfast-estimate',
  slow: true,
  each: pairsOf,
  reads: {
    carbon: standing.carbon,
    ...covering,
    ...light,
    coverUnder: gathered('cover', ({ under }) => standKey(under), '1'),
    taller: flag('shades', shades),
    overgrows: flag('overgrows', overgrows),
    /** 1 where the one under has a cover of its own to lose. */
    losesGround: setting(
      ({ under }) => `${under.stand.kind} spreads`,
      '1',
      ({ under }) => (spreads(under.stand.kind) ? 1 : 0),
    ),
  },
  parameters: { carbonContent: standFacts.carbonContent, ...winning },
  gathers: {
    above: { key: ({ under }) => standKey(under), sum: 'taller / carbonContent * carbon', unit: 'g' },
    pressed: { key: ({ under }) => standKey(under), sum: 'overgrows * push', unit: 'd⁻¹' },
    winnable: { key: standKey, sum: 'overgrows * losesGround * coverUnder', unit: '1' },
  },
  terms: { push },
  transfers: [],
})

/**
 * Light and ground between kinds. The stores of the winner do not enter, which makes it too quick in water that
 * starves it.
 */
export const overgrowth = process<Growing>({
  id: 'overgrowth',
  title: 'Shading and overgrowth',
  says: 'Taller kinds shade lower ones; kinds that lie over others take their ground, and what is under them dies off.',
  source: 'holdfast-estimate',
  slow: true,
  each: (system) => {
    const pairs = pairsOf(system).filter(({ of }) => overgrows(...kindsOf(of)))
    const beside = new Set(pairs.flatMap(({ of }) => [standKey(of), standKey(of.under)]))
    return namedStands(system).filter(({ of }) => beside.has(standKey(of)))
  },
  reads: {
    carbon: standing.carbon,
    ...covering,
    ...stored.reads,
    ...light,
    pressed: gathered('pressed', standKey, 'd⁻¹'),
    winnable: gathered('winnable', standKey, '1'),
  },
  parameters: winning,
  terms: { ...stored.terms, push },
  transfers: [
    ...leaves(water.particles, 'pressed'),
    // Ground goes from tuft to tuft. A film that dies off leaves ground free to spread into, and a crust is the
    // ground itself: who stands on it gains none beside.
    change({ state: ownCover, rate: 'push * winnable - pressed * cover' }),
  ],
})
