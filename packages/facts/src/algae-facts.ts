import { type AlgaeKind, algaeKinds } from './algae-kind.ts'
import type { Fact, Provenance, Range } from './fact.ts'

const water = 'water at 24 to 27 °C, salinity about 35; spread between species of the kind'

/** The numbers of one kind of algae as facts `algae.<kind>.<what>`, so that a process can name them as priors. */
function factsOf(kind: AlgaeKind): readonly Fact[] {
  const make = (
    what: string,
    title: string,
    unit: string,
    range: Range,
    provenance: Provenance,
    note?: string,
  ): Fact => ({
    id: `algae.${kind.key}.${what}`,
    title: `${kind.title}: ${title}`,
    unit,
    low: range.low,
    typical: range.typical,
    high: range.high,
    source: kind.sources[0],
    ...(kind.sources.length > 1 ? { also: kind.sources.slice(1) } : {}),
    provenance,
    holds: water,
    note: note ?? kind.note,
  })
  const told = (field: keyof AlgaeKind): Provenance => (kind.read?.includes(field) ? 'read' : kind.provenance)
  const estimate = (what: string, title: string, unit: string, middle: number, spread: Spread): Fact =>
    make(what, title, unit, around(middle, spread), 'estimate', spread.note)
  return [
    make('growth', 'largest net growth', 'd⁻¹', kind.growth, told('growth')),
    make(
      'half_saturation_N',
      'half-saturation of growth in inorganic N',
      'µmol L⁻¹',
      kind.halfSaturationN,
      told('halfSaturationN'),
    ),
    make(
      'half_saturation_P',
      'half-saturation of growth in phosphate',
      'µmol L⁻¹',
      kind.halfSaturationP,
      told('halfSaturationP'),
    ),
    make(
      'light_saturation',
      'onset of light saturation',
      'µmol photons m⁻² s⁻¹',
      kind.lightSaturation,
      told('lightSaturation'),
    ),
    make('full_cover_mass', 'dry mass at full cover', 'g m⁻²', kind.fullCoverMass, told('fullCoverMass')),
    make('shed', 'share that drifts off', 'd⁻¹', kind.shed, told('shed')),
    make('stubble', 'dry mass that grazing cannot take', 'g m⁻²', kind.stubble, 'estimate', stubble),
    estimate('quota_N_min', 'N of starved tissue', 'g N g⁻¹', kind.tissueN.low, fifth),
    {
      ...estimate(
        'quota_N_typical',
        'N of tissue in readable nutrients',
        'g N g⁻¹',
        kind.tissueN.typical,
        fifth,
      ),
      aside: usual,
    },
    estimate('quota_N_max', 'N of fed tissue', 'g N g⁻¹', kind.tissueN.high, fifth),
    estimate('quota_P_min', 'P of starved tissue', 'g P g⁻¹', kind.tissueP.low, fifth),
    {
      ...estimate(
        'quota_P_typical',
        'P of tissue in readable nutrients',
        'g P g⁻¹',
        kind.tissueP.typical,
        fifth,
      ),
      aside: usual,
    },
    estimate('quota_P_max', 'P of fed tissue', 'g P g⁻¹', kind.tissueP.high, fifth),
    estimate('tissue_C', 'organic C of tissue', 'g C g⁻¹', kind.tissueC, seventh),
    estimate('canopy_height', 'height of an ungrazed stand', 'mm', kind.canopyHeight, half),
    make(
      'settles_on_bare',
      'chance to settle on bare rock',
      '1',
      chance(kind.settlesOnBare),
      'estimate',
      settling,
    ),
    make(
      'settles_on_crust',
      'chance to settle on crust',
      '1',
      chance(kind.settlesOnCrust),
      'estimate',
      settling,
    ),
    make(
      'temperature_best',
      'best temperature',
      '°C',
      degrees(kind.temperatureBest),
      told('temperatureBest'),
      'Spread of 1.5 °C either way set here.',
    ),
  ]
}

interface Spread {
  readonly share: number
  readonly note: string
}

// The table gives one number for these; the spread is ours and says so in the note of each fact.
const fifth: Spread = {
  share: 0.2,
  note: 'End of the range of tissue contents of the kind; spread of 20 % either way is an estimate.',
}
const seventh: Spread = {
  share: 0.15,
  note: 'One number in the table; spread of 15 % either way is an estimate.',
}
const half: Spread = {
  share: 0.5,
  note: 'One number in the table; spread of half either way is an estimate.',
}
const usual = 'a stand fills between the least and the most'
const stubble =
  'Estimate: bases, runners and what sits in pits; grazed turf stands at 10 to 40 g dry per m², others near a twentieth of full cover, crusts nearly whole.'

/** Rounded to ten digits, so that 0.03 less a fifth reads 0.024. */
const round = (value: number): number => Number(value.toPrecision(10))

function around(middle: number, spread: Spread): Range {
  return {
    low: round(middle * (1 - spread.share)),
    typical: middle,
    high: round(middle * (1 + spread.share)),
  }
}

/** Relative to a diatom on bare rock, which is 1 by definition; nothing stays nothing. */
const chance = (typical: number): Range =>
  typical === 0 || typical === 1
    ? { low: typical, typical, high: typical }
    : { low: round(typical / 2), typical, high: round(Math.min(0.99, typical * 1.5)) }
const settling =
  'Guess of the table, relative to a diatom on bare rock; half to one and a half of it set here.'

const degrees = (best: number): Range => ({ low: best - 1.5, typical: best, high: best + 1.5 })

/** The facts of all kinds of algae, in the order of the kinds. */
export const algaeFacts: readonly Fact[] = algaeKinds().flatMap(factsOf)
