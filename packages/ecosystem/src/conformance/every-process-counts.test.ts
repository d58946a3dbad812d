import { catalogueAlone } from '@holdfast/facts'
import { expect, test } from 'vitest'
import { assemble, typicalParameters } from '../assemble/assemble.ts'
import { stateIndex } from '../assemble/model.ts'
import { chosen, type Process } from '../declare/index.ts'
import { processes } from '../processes/index.ts'
import { simulate, timeline } from '../simulate/index.ts'
import { startOf } from '../start/start.ts'
import { run } from '../testing/run.ts'
import { reef } from '../testing/systems.ts'

/**
 * The parameters that are together factors of everything the process does; with them at nothing it stops.
 * Nitrifiers stop where the water does not reach them.
 */
const stops: Readonly<Record<string, readonly string[]>> = {
  'ammonia-oxidation': ['coral.s_nh4'],
  'nitrite-oxidation': ['coral.s_nh4'],
  denitrification: ['den.sand', 'den.live_rock'],
  leaching: ['leach.k.buried', 'leach.k.exchangeable'],
  silicate: ['si.release.sand', 'si.release.rock', 'si.release.glass', 'si.k.opal'],
  'mechanical-filtration': ['mech.reach'],
  'filter-rot': ['mech.leach.n', 'mech.leach.p'],
  'bacterial-growth': ['cd.mumax', 'cd.seed'],
  'carbonate-sorption': ['sorb.k_fast', 'sorb.k_slow'],
  'ferric-media': ['fe.klump'],
  'algal-growth': ['algae.hair_green.growth', 'algae.turf.growth', 'alg.resp', 'algae.settling_rate'],
  'algal-growth-of-films': ['algae.film_green.growth', 'alg.resp', 'algae.settling_rate'],
  'algal-growth-of-diatoms': ['algae.film_diatom.growth', 'alg.resp', 'algae.settling_rate'],
  'algal-growth-of-crusts': ['algae.coralline.growth', 'alg.resp', 'algae.settling_rate'],
  'nitrogen-fixation': ['n2.turf', 'n2.mat'],
  overgrowth: ['algae.overgrowth_share'],
  'algal-shedding': ['hair_green', 'turf', 'film_green', 'film_diatom', 'coralline'].map(
    (kind) => `algae.${kind}.shed`,
  ),
  'coral-uptake': ['coral.nh4', 'coral.no3', 'coral.po4', 'coral.growth'],
  'bed-growth': ['alg.chaeto.mumax', 'alg.turf.mumax', 'alg.resp', 'coral.s_nh4', 'coral.s_po4'],
  'bed-decay': ['alg.dieback', 'alg.leak'],
  'crew-turnover': ['grazer.trochus_histrio.mortality', 'crew.starvation', 'crew.first_month_loss'],
  grazing: ['grazer.trochus_histrio.consumption'],
  'unexplained-loss': ['unexplained.nitrate', 'unexplained.phosphate'],
}
/** These run on what is fed or poured, not on a parameter. */
const byHusbandry = ['feeding', 'top-off', 'continuous-water-change', 'carbon-dosing']

/** Of a process that is not in the table the first parameter is such a factor. */
function first({ each, parameters }: Process): readonly string[] {
  const [parameter] = Object.values(parameters)
  return [...new Set(each(reef, catalogueAlone).map(({ of }) => chosen(parameter.fact, of)))]
}

const rowsWith = (facts: Readonly<Record<string, number>>) =>
  run({ system: reef, days: 10, facts }).ledger.rows
const usualRows = rowsWith({})

test('the table names processes that there are', () => {
  const ids = new Set(processes.map(({ id }) => id))
  expect([...Object.keys(stops), ...byHusbandry].filter((id) => !ids.has(id))).toEqual([])
})

test.each(
  processes
    // What only sums up for others moves nothing itself.
    .filter(({ id, transfers }) => !byHusbandry.includes(id) && transfers.length > 0)
    .map((process) => [process.id, stops[process.id] ?? first(process)] as const),
)(
  '%s is in the books, and gone from them when its rate is nothing',
  (id, facts) => {
    const stopped = rowsWith(Object.fromEntries(facts.map((fact) => [fact, 0])))
    expect(usualRows.filter(({ process }) => process === id).length).toBeGreaterThan(0)
    expect(stopped.filter(({ process }) => process === id)).toEqual([])
  },
  30_000,
)

test.each(byHusbandry)('%s is in the books', (id) => {
  expect(usualRows.filter(({ process }) => process === id).length).toBeGreaterThan(0)
})

test('every parameter of the reef moves the books', () => {
  const model = assemble(reef)
  const usual = typicalParameters(model)
  const start = startOf(model, usual, { nitrate_mg_L: 5, phosphate_mg_L: 0.05 }, 0)
  // Fresh media take whatever the pump brings; only used ones ask how much they hold.
  start[stateIndex(model, 'media.ferric/P')] = 30_000
  start[stateIndex(model, 'bed.silica/Si')] = 1000
  start[stateIndex(model, 'water.silicate/Si')] = 3 * model.volume_L
  /** A bed grows by the scarcer store, and what it does in the dark it does in the dark: each has its own start. */
  const starts = [{ N: 0.2 }, { N: 0.55 }, { P: 0.15 }, { N: 2, P: 3, dark: 40 }].map((bed) => startWith(bed))
  function startWith({ N = 1, P = 1, dark = 0 }: { N?: number; P?: number; dark?: number }): Float64Array {
    const begin = Float64Array.from(start)
    begin[stateIndex(model, 'hunger.Trochus histrio')] = 0.8
    begin[stateIndex(model, 'newcomers.Trochus histrio')] = 0.5
    begin[stateIndex(model, 'animals.Trochus histrio/N')] /= 2
    begin[stateIndex(model, 'animals.fish/N')] /= 2
    for (const id of ['refugium', 'turf scrubber']) {
      begin[stateIndex(model, `cultivated.${id}/N`)] *= N
      begin[stateIndex(model, `cultivated.${id}/P`)] *= P
      begin[stateIndex(model, `dark.${id}`)] = dark
    }
    begin[stateIndex(model, 'water.bacteria/N')] *= N
    begin[stateIndex(model, 'water.bacteria/P')] *= P * P
    return begin
  }
  const events = [
    { day: 0.5, kind: 'animals added', taxon: 'Trochus histrio', count: 1, mass_g: 9 },
    { day: 0.5, kind: 'animals added', taxon: 'Chromis viridis', count: 1, mass_g: 4 },
    { day: 0.6, kind: 'animals lost', taxon: 'Chromis viridis', count: 1, mass_g: 4 },
    { day: 0.5, kind: 'harvest', from: 'refugium', wet_g: 20 },
    { day: 0.5, kind: 'siphoning' },
    ...reef.rock.map((rock) => ({ day: 0.5, kind: 'rock added', rock }) as const),
    { day: 0.5, kind: 'harvest', from: 'turf scrubber', wet_g: 2 },
  ] as const
  const scraped = { day: 0.5, happens: 'harvest', with: { 'scraped turf scrubber': 1 } }
  const happens = timeline({ system: reef, events, from: 0, to: 1, asOf: 0 })
  const books = (begin: Float64Array, parameters: Float64Array): string => {
    const run = simulate({
      model,
      parameters,
      start: begin,
      from: 0,
      to: 1,
      timeline: [...happens, scraped].sort((a, b) => a.day - b.day),
      marks: [1],
    })
    const [{ flows, eventFlows }] = run.marks
    return [...flows, ...eventFlows].join(' ')
  }
  const known = starts.map((begin) => books(begin, usual))
  const idle = model.parameters.filter(({ fact, band }, k) => {
    // What is exact cannot be else; films, turf and crusts stand lower than any mouth asks, none of these
    // tears, the films of the reef are described,
    // and its crew has no day of plenty.
    if (
      band.low === band.high ||
      /^algae\.(film_\w+|turf|coralline)\.canopy_height$|^(grazing\.torn_off|crew\.unseen_food|crew\.recovers)$/.test(
        fact,
      )
    )
      return false
    const other = Float64Array.from(usual)
    // A tenth less; of what is nothing in the middle of its band, its high end.
    other[k] = other[k] === 0 ? band.high : other[k] * 0.9
    return starts.every((begin, n) => books(begin, other) === known[n])
  })
  expect(idle.map(({ fact }) => fact)).toEqual([])
}, 60_000)
