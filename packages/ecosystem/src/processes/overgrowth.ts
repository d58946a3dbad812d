import { algaeKind, algaeKinds } from '@holdfast/facts'
import { standAccount, standCover, water } from '../accounts/index.ts'
import { carry, change, fact, process, setting, state } from '../declare/index.ts'
import type { System } from '../system.ts'
import { temperature } from './readings.ts'
import {
  type Growing,
  hoursSetting,
  layerOf,
  lightSetting,
  ofKind,
  spreads,
  spreadsOf,
  standFacts,
  standing,
  standKey,
  standsOf,
  standTerms,
} from './stands.ts'

/** A stand over another on the same patch: it overgrows it, or is so much taller that it shades it, or both. */
interface Over extends Growing {
  readonly under: Growing
  readonly overgrows: boolean
  readonly taller: boolean
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

function pairsOf(system: System): readonly { readonly name: string; readonly of: Over }[] {
  const stands = standsOf(system)
  return stands.flatMap((over) =>
    stands.flatMap((under) => {
      const { stand } = over
      const other = under.stand
      if (stand.surface !== other.surface || stand.patch !== other.patch || stand.kind === other.kind)
        return []
      const of = {
        ...over,
        under,
        overgrows: overgrows(stand.kind, other.kind),
        taller: shades(stand.kind, other.kind),
      }
      const name = `${stand.kind} over ${other.kind} on ${stand.surface}, ${stand.patch}`
      return of.overgrows || of.taller ? [{ name, of }] : []
    }),
  )
}

const flag = (name: string, holds: (over: Over) => boolean) =>
  setting<Over>(
    ({ stand, under }) => `${stand.kind} ${name} ${under.stand.kind}`,
    '1',
    (over) => (holds(over) ? 1 : 0),
  )

/**
 * Light and ground between kinds. The rate goes by what the winner could grow in the light of the place; its
 * stores do not enter, which makes it too quick in water that starves the winner.
 */
export const overgrowth = process<Over>({
  id: 'overgrowth',
  title: 'Shading and overgrowth',
  says: 'Taller kinds shade lower ones; kinds that lie over others take their ground, and what is under them dies off.',
  source: 'holdfast-estimate',
  slow: true,
  each: pairsOf,
  reads: {
    ...standing,
    other: state(({ under }) => standCover(under.stand), '1'),
    temperature,
    light: setting<Over>(
      ({ stand }) => lightSetting(stand.surface),
      'µmol photons m⁻² s⁻¹',
      ({ surface }) => surface.light_umol_m2_s,
    ),
    hours: setting<Over>(
      ({ stand }) => hoursSetting(stand.surface),
      'h d⁻¹',
      ({ surface }) => surface.light_h_per_day,
    ),
    halfDay: setting<Over>('half a day', 'h d⁻¹', () => 12),
    overgrows: flag('overgrows', (over) => over.overgrows),
    taller: flag('shades', (over) => over.taller),
    spreads,
    otherSpreads: setting<Over>(
      ({ under }) => `${under.stand.kind} spreads`,
      '1',
      ({ under }) => spreadsOf(under),
    ),
  },
  parameters: {
    ...standFacts,
    fastest: fact(ofKind('growth'), 'd⁻¹'),
    saturation: fact(ofKind('light_saturation'), 'µmol photons m⁻² s⁻¹'),
    best: fact(ofKind('temperature_best'), '°C'),
    warming: fact('alg.q10', '1'),
    patchLight: fact(({ stand }) => `patch.light.${stand.patch}`, '1'),
    pushes: fact('algae.overgrowth_share', '1'),
  },
  gathers: { above: { key: ({ under }) => standKey(under.stand), sum: 'taller * mass', unit: 'g' } },
  terms: {
    ...standTerms,
    // Ground taken in a day, as share of what the other holds.
    taken: {
      is: 'overgrows * pushes * fastest * warmth(warming, temperature, best) * least(hours / halfDay * lightSaturation(light * patchLight, saturation), 1.4) * least(thickness, 1) * cover',
      unit: 'd⁻¹',
    },
  },
  transfers: [
    carry({
      from: ({ under }) => standAccount(under.stand),
      to: water.particles,
      atoms: ['N', 'P', 'C'],
      rate: 'taken',
    }),
    // Ground goes from tuft to tuft. A film that dies off leaves ground free to spread into, and a crust is the
    // ground itself: who stands on it gains none beside.
    change({ state: ({ under }) => standCover(under.stand), rate: '-otherSpreads * taken * other' }),
    change({ state: ({ stand }) => standCover(stand), rate: 'spreads * otherSpreads * taken * other' }),
  ],
})
