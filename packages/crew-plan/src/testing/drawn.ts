/** Crew programmes of systems drawn at random, with growth as keepers see it and not out of the model. */
import {
  appetiteOf,
  patches,
  patchShare,
  type Surface,
  type SurfaceKind,
  type System,
} from '@holdfast/ecosystem'
import { catalogueAlone, type Grazer } from '@holdfast/facts'
import { type Candidate, homeOf, judged } from '../candidates.ts'
import { type CrewProgramme, crewProgramme } from '../crew-programme.ts'
import type { Demand } from '../demand.ts'
import type { Wishes } from '../question.ts'

/** A dice of its own for each number, so that an instance is the same on every machine (Park & Miller 1988, as recalled). */
export function dice(number: number): () => number {
  let state = (number * 48271 + 11) % 2147483647
  const roll = (): number => {
    state = (state * 48271) % 2147483647
    return state / 2147483647
  }
  for (let k = 0; k < 5; k++) roll()
  return roll
}

/** Dry algae that grow on a square metre in a day where half of the rock is free; estimates, chosen for these checks alone. */
const growth: Readonly<Record<string, Readonly<Record<string, number>>>> = {
  rock_face: { turf: 0.55, hair_green: 0.5, film_green: 0.45 },
  rock_underside: { film_green: 0.12 },
  glass: { film_green: 0.6 },
  sand: { film_diatom: 0.3 },
}

export interface Drawn {
  readonly volume_L: number
  /** Kinds beside the usual ones on the rock, g dry m⁻² d⁻¹. */
  readonly also?: Readonly<Record<string, number>>
  /** Kinds that grow on every surface beside, g dry m⁻² d⁻¹. */
  readonly everywhere?: Readonly<Record<string, number>>
  /** Names of tank mates. */
  readonly mates?: readonly string[]
  readonly corals?: string
  readonly surfaces?: readonly Surface[]
  /** Factor on all growth. */
  readonly lush?: number
}

/** A box of so much water with its rock, glass and sand. */
export function drawnSystem({ volume_L, mates = [], corals, surfaces = [] }: Drawn): System {
  const floor_m2 = 2.3 * (volume_L / 2300) ** (2 / 3)
  const areas: Readonly<Record<string, number>> = {
    rock_face: 1.6 * floor_m2,
    rock_underside: 1.1 * floor_m2,
    glass: 1.87 * floor_m2,
    sand: 0.7 * floor_m2,
  }
  return {
    id: 'drawn',
    name: 'Drawn',
    timeZone: 'UTC',
    vessels: [
      {
        id: 'display',
        kind: 'display',
        volume_L,
        glass_volume_L: volume_L,
        length_cm: 122 * (volume_L / 285) ** (1 / 3),
      },
    ],
    flow: [],
    surfaces: [
      ...Object.entries(areas).map(
        ([kind, area_m2]): Surface => ({
          id: kind,
          vessel: 'display',
          kind: kind as SurfaceKind,
          area_m2,
          light_umol_m2_s: 150,
          light_h_per_day: 9,
          age_days: 700,
        }),
      ),
      ...surfaces,
    ],
    rock: [{ kind: 'cured live', mass_kg: volume_L / 10, age_days: 700 }],
    source_water: {},
    salt_mix: {},
    salinity_psu: 35,
    temperature_C: 25.5,
    evaporation_L_per_day: volume_L / 100,
    feeds: [{ kind: 'dry pellet', g_per_day: volume_L / 200 }],
    equipment: [],
    animals: mates.map((kind) => ({ kind, count: 1, role: 'fish' })),
    ...(corals === undefined ? {} : { corals: { kind: corals, area_m2: 0.1 } }),
    algae: [],
  }
}

/** A quarter of what else grows on the rock grows under its ledges too; an estimate like the others. */
function alsoOn({ kind }: Surface, also: Drawn['also'] = {}): Readonly<Record<string, number>> {
  if (kind === 'rock_face') return also
  if (kind !== 'rock_underside') return {}
  return Object.fromEntries(Object.entries(also).map(([alga, perArea]) => [alga, perArea / 4]))
}

export interface Instance {
  readonly system: System
  readonly candidates: readonly Candidate[]
  readonly crew: CrewProgramme
}

/** The programme of such a system: what grows is told, and every mouth is as hungry as it may be. */
export function instance(
  drawn: Drawn,
  wishes: Wishes,
  takes: (animal: Grazer) => boolean = () => true,
  loose = false,
): Instance {
  const system = drawnSystem(drawn)
  const home = homeOf(system)
  const { candidates: all } = judged(system, home, wishes, catalogueAlone)
  const candidates = all.filter(({ animal }) => takes(animal))
  const places: Demand['places'] = system.surfaces.flatMap((surface) => {
    const kinds = {
      ...(growth[surface.kind] ?? { hair_green: 0.8 }),
      ...alsoOn(surface, drawn.also),
      ...drawn.everywhere,
    }
    return Object.entries(kinds).flatMap(([kind, perArea]) =>
      patches.map((patch) => ({
        key: `${surface.id} ${patch} ${kind}`,
        surface: surface.id,
        patch,
        kind,
        growth_g_d:
          (drawn.lush ?? 1) * perArea * surface.area_m2 * patchShare(surface, patch, catalogueAlone),
        mass_g: 0.2 * perArea * surface.area_m2,
        cover: 0.2,
        height_mm: 2,
      })),
    )
  })
  const demand: Demand = {
    places,
    living: new Map(),
    intakes: new Map(
      candidates.map(({ animal: { taxon } }) => {
        const appetite_g_d = appetiteOf(taxon, system, catalogueAlone)
        return [taxon, { taxon, appetite_g_d, algae_g_d: appetite_g_d, detritus_g_d: 0 }]
      }),
    ),
  }
  const lean = new Map(places.map(({ key, growth_g_d }) => [key, 0.4 * growth_g_d]))
  const learnt = {
    lean,
    thrift: 1,
    more: new Map(),
    fed: new Map(),
    enoughFor: new Map(),
    closed: false,
    hands: [],
  }
  return {
    system,
    candidates,
    crew: crewProgramme({ system, home, facts: catalogueAlone, wishes, candidates, demand, learnt, loose }),
  }
}
