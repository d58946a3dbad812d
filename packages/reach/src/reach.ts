import { type BandOver, bandOver, type Present } from '@holdfast/crew-plan'
import {
  appetiteOf,
  crewOf,
  livesAt,
  livingOf,
  type PlaceWeek,
  patches,
  patchShare,
  reaches,
  type System,
  stateIndex,
  weekOf,
} from '@holdfast/ecosystem'
import { type KnownAnimals, wantedKind } from '@holdfast/facts'
import { quietly, type Running, stopped } from '@holdfast/inference'
import type { Covered, GrazerReach, PlaceReach, ReachAnswer } from './answer.ts'
import { exposedOf } from './exposed.ts'
import { days, leftAt, patchOf } from './left.ts'

/**
 * What grows on every patch in the coming week, who eats of it and what is left, with husbandry unchanged: read off
 * the flows of a run through that week in each world that the system may be.
 */
export function reachOf(present: Present, running: Running = quietly): ReachAnswer {
  const { model, day, worlds, routine } = present
  const to = day + days
  const moments = routine(to)
  const weeks = worlds.map((world, w) => {
    if (running.cancelled()) throw stopped
    running.onProgress(w / worlds.length)
    return weekOf({ model, world, from: day, to, moments })
  })
  const band = bandOver(present)
  const grazers = grazersOver(weeks, present, band)
  const places = (weeks[0] ?? []).map((place, p) => ({
    ...placeOver(place, p, weeks, present, band),
    met: metBy(grazers, place, model.facts),
  }))
  return {
    from: day,
    to,
    worlds: worlds.length,
    places: places.toSorted((a, b) => density(b) - density(a)),
    covered: coveredBy(weeks, present, band),
    grazers,
    exposed: exposedOf({ places, weeks, grazers, present, band }),
  }
}

const density = ({ left_g_week, area_m2 }: PlaceReach): number => left_g_week.value / area_m2

/** Whether anybody of a crew gets to a stand and likes it. */
function metBy(
  grazers: readonly GrazerReach[],
  place: PlaceWeek,
  { taste }: KnownAnimals,
): PlaceReach['met'] {
  const there = grazers.filter(({ gets }) => gets.includes(patchOf(place)))
  if (there.length === 0) return 'not reached'
  return there.some(({ taxon }) => taste(taxon, place.kind).preference > 0) ? 'eaten' : 'not eaten'
}

function placeOver(
  { surface, patch, kind, grazed_g_d }: PlaceWeek,
  p: number,
  weeks: readonly (readonly PlaceWeek[])[],
  { model }: Present,
  band: BandOver,
): Omit<PlaceReach, 'met'> {
  const described = model.system.surfaces.find(({ id }) => id === surface)
  const share = described ? patchShare(described, patch, model.facts) : 0
  const eaten = [...grazed_g_d.keys()].map((taxon) => ({
    taxon,
    g_week: band((w) => days * (weeks[w][p].grazed_g_d.get(taxon) ?? 0)).value,
  }))
  return {
    surface,
    patch,
    kind,
    area_m2: (described?.area_m2 ?? 0) * share,
    growth_g_week: band((w) => days * Math.max(0, weeks[w][p].growth_g_d)),
    left_g_week: band((w) => leftAt(weeks[w][p])),
    eaten: eaten.filter(({ g_week }) => g_week > 0).sort((a, b) => b.g_week - a.g_week),
    mass_g: band((w) => weeks[w][p].mass_g).value,
    cover: band((w) => weeks[w][p].cover).value,
    height_mm: band((w) => weeks[w][p].height_mm).value,
    wanted: wantedKind(kind),
  }
}

/** Of each kind on each surface, what its patches make together. */
function coveredBy(
  weeks: readonly (readonly PlaceWeek[])[],
  { model: { system, facts } }: Present,
  band: BandOver,
): readonly Covered[] {
  const places = (weeks[0] ?? []).map((place, p) => ({ ...place, p }))
  return system.surfaces.flatMap((surface) => {
    const within = places.filter((place) => place.surface === surface.id)
    return [...new Set(within.map(({ kind }) => kind))].map((kind) => ({
      surface: surface.id,
      kind,
      cover: band((w) =>
        within
          .filter((place) => place.kind === kind)
          .reduce((sum, { patch, p }) => sum + patchShare(surface, patch, facts) * weeks[w][p].cover, 0),
      ),
    }))
  })
}

function grazersOver(
  weeks: readonly (readonly PlaceWeek[])[],
  { model, worlds }: Present,
  band: BandOver,
): readonly GrazerReach[] {
  const { system, facts } = model
  const taxa = [...new Set(crewOf(system, facts).map(({ taxon }) => taxon))]
  return taxa.flatMap((taxon) => {
    const animal = facts.grazer(taxon)
    if (!animal) return []
    const index = stateIndex(model, livingOf(taxon).id)
    const living = (w: number): number => worlds[w].states[index]
    const eaten = (w: number, of: (place: PlaceWeek) => number): number =>
      weeks[w].reduce((sum, place) => sum + of(place) * (place.grazed_g_d.get(taxon) ?? 0), 0)
    // Of a kind it likes less it takes less with the same appetite.
    const spent = ({ kind }: PlaceWeek): number => 1 / Math.max(facts.taste(taxon, kind).preference, 1e-6)
    const appetite = appetiteOf(taxon, system, facts)
    const row: GrazerReach = {
      taxon,
      tradeName: animal.tradeName,
      group: animal.group,
      living: band(living).value,
      eaten_g_week: band((w) => days * eaten(w, () => 1)),
      used: band((w) => Math.min(1, eaten(w, spent) / Math.max(living(w) * appetite, 1e-9))),
      gets: getsTo(system, taxon, facts),
    }
    return row.living >= 0.5 ? [row] : []
  })
}

const getsTo = (system: System, taxon: string, facts: Present['model']['facts']): readonly string[] => {
  const { surfaces, animals } = system
  const size = animals.find((one) => one.taxon === taxon)?.adult_size_cm
  return surfaces.flatMap((surface) =>
    patches
      .filter((patch) => livesAt(system, taxon, surface) && reaches(surface, taxon, patch, size, facts))
      .map((patch) => patchOf({ surface: surface.id, patch })),
  )
}
