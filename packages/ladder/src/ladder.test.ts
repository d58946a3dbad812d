import { caution, measure } from '@holdfast/facts'
import { describe, expect, test, vi } from 'vitest'
import { climbed, offered, read, reasonAgainst, seen, soundReef, today } from './testing/climbed.ts'

vi.setConfig({ testTimeout: 60_000 })

const hair = seen('hair_green', 'rock_face', 0.2)
const loaded = [...read(9, 0.25), hair]
const spent = { equipment: swapped('ferric media reactor', { mass_g: 5 }) }

/** The equipment with some keys of one piece changed. */
function swapped(kind: string, changes: object) {
  return soundReef.equipment.map((item) => (item.kind === kind ? { ...item, ...changes } : item))
}

describe('the cause decides', () => {
  test('one system with the same growth gets another first rung when only its log is another', () => {
    const starved = climbed({ system: spent, observations: loaded })
    const overfed = climbed({
      system: spent,
      observations: loaded,
      events: [
        { day: today - 40, kind: 'feed change', g_per_day: 8 },
        { day: today - 1, kind: 'media placed', mass_g: 150 },
      ],
    })
    expect(offered(starved)[0]).toBe('ferric_media_small_repeated')
    expect(offered(overfed)[0]).toBe('feed_less')
  })

  test('spent media are renewed in small portions, never all at once above corals', () => {
    const answer = climbed({ system: spent, observations: loaded })
    expect(answer.causes[0].key).toBe('spent-medium')
    expect(reasonAgainst(answer, 'ferric_media_new')).toMatch(/small portions/)
    expect(answer.cautions.map(({ key }) => key)).toContain('phosphate_drop_too_fast')
  })

  test('loaded tap water is purified before a change of it is any use', () => {
    const answer = climbed({
      system: {
        source_water: { kind: 'tap water', NO3_mg_L: 40, PO4_mg_L: 1 },
        equipment: soundReef.equipment.filter(({ kind }) => kind !== 'ferric media reactor'),
      },
      observations: read(50, 0.8),
    })
    expect(offered(answer)[0]).toBe('source_water_purify')
    expect(reasonAgainst(answer, 'water_change_small')).toMatch(/carries nitrate and phosphate/)
  })

  test('readings at nothing are raised, whatever grows; what lowers them is left out', () => {
    const answer = climbed({ observations: [...read(0.2, 0.01, true), seen('dino', 'rock_face', 0.4)] })
    expect(offered(answer).slice(0, 3)).toEqual(['ferric_media_less', 'feed_more', 'nutrients_raise'])
    const keys = answer.cautions.map(({ key }) => key)
    expect(keys[0]).toBe('palytoxin')
    expect(keys).toEqual(
      expect.arrayContaining(['nitrate_too_low_for_corals', 'phosphate_too_low_for_corals']),
    )
  })

  test('a growth behind a comb is for the hand and a lid, not for more mouths outside or leaner water', () => {
    const answer = climbed({ observations: [...read(5, 0.06), seen('hair_green', 'overflow', 0.8)] })
    expect(offered(answer).slice(0, 2)).toEqual(['hand_removal', 'shade_surface'])
    expect(reasonAgainst(answer, 'crew_add')).toMatch(/no animal outside gets to/)
    expect(reasonAgainst(answer, 'nutrients_lower')).toMatch(/harms corals/)
  })

  test('a bed in the dark is taken out before its lamp is mended', () => {
    const bed = {
      kind: 'refugium' as const,
      algae: 'Chaetomorpha',
      wet_mass_g: 800,
      lit_area_m2: 0.1,
      light_umol_m2_s: 200,
      light_h_per_day: 14,
      light_off_since: today - 30,
      harvest_g_wet: 100,
      harvest_every_days: 14,
    }
    const answer = climbed({
      system: { equipment: [...soundReef.equipment, bed] },
      observations: read(25, 0.06),
    })
    expect(offered(answer).slice(0, 2)).toEqual(['refugium_remove_dead', 'refugium_light_restore'])
    expect(offered(answer)).not.toContain('refugium_harvest_more')
  })

  test('a medium that new water loaded comes after the new water', () => {
    const answer = climbed({
      system: { ...spent, source_water: { kind: 'tap water', PO4_mg_L: 12 } },
      observations: loaded,
    })
    expect(offered(answer)[0]).toBe('source_water_purify')
    expect(answer.causes.map(({ key }) => key)).toContain('spent-medium')
  })

  test('while something is broken nobody is told to feed less', () => {
    const loadedTap = climbed({
      system: { source_water: { kind: 'tap water', NO3_mg_L: 40 } },
      observations: read(50, 0.06),
    })
    expect(loadedTap.causes.map(({ key }) => key)).toEqual(['source-water'])
    const fedAlone = climbed({ observations: read(50, 0.06) })
    expect(offered(fedAlone)[0]).toBe('feed_less')
  })

  test('silicate of new water comes before all else against a film of diatoms', () => {
    const film = [...read(5, 0.06), seen('film_diatom', 'rock_face', 0.5)]
    const tap = { source_water: { kind: 'tap water', SiO2_mg_L: 8 } }
    expect(offered(climbed({ system: tap, observations: film }))[0]).toBe('source_water_purify')
    expect(offered(climbed({ observations: film }))[0]).toBe('wait')
  })

  test('what was noted of a growth names it, and what may be slime is met with hands off', () => {
    const noted = { form: 'slime_lumps_strings', colour: 'brown' }
    const answer = climbed({ observations: read(5, 0.06), asked: { noted } })
    expect(answer.kind).toBe('dino')
    expect(answer.cautions[0]?.key).toBe('palytoxin')
  })

  test('grazers that would starve in two months are fed, and none are added', () => {
    const answer = climbed({
      system: {
        animals: [
          ...soundReef.animals,
          { kind: 'turban', taxon: 'Turbo bruneus', count: 400, role: 'grazer' },
        ],
      },
      observations: [...read(5, 0.06), seen('hair_green', 'rock_face', 0.04)],
    })
    expect(answer.causes.map(({ key }) => key)).toContain('hungry')
    expect(offered(answer)).toContain('crew_feed')
    expect(reasonAgainst(answer, 'crew_add')).toMatch(/find too little/)
  })

  test('nothing is proposed where nothing is wrong', () => {
    const answer = climbed({ observations: read(5, 0.06) })
    expect(answer.causes).toEqual([])
    expect(answer.rungs).toEqual([])
  })
})

describe('what must not hurt', () => {
  test('ammonia among animals comes before everything, and no animal is added', () => {
    const answer = climbed({
      observations: [...loaded, { day: today, quantity: 'ammonia', value: 1, belowDetection: false }],
      events: [{ day: today - 4, kind: 'animals lost', taxon: 'mixed reef fish', count: 1 }],
    })
    expect(answer.causes.map(({ key }) => key).slice(0, 2)).toEqual(['poison', 'bodies'])
    expect(offered(answer).slice(0, 2)).toEqual(['water_change_large', 'remove_dead'])
    expect(reasonAgainst(answer, 'crew_add')).toMatch(/seven days/)
  })

  test('a tank that still cycles waits in the dark, with a date and a stop sign', () => {
    const answer = climbed({
      system: { animals: [], feeds: [] },
      observations: [{ day: today, quantity: 'nitrite', value: 2, belowDetection: false }],
    })
    const [wait, next] = answer.rungs
    expect(wait).toMatchObject({ measure: 'wait', judgedOn: today + 28 })
    expect(wait.stop).toMatch(/suffers/)
    expect(next.measure).toBe('water_change_large')
    expect(reasonAgainst(answer, 'lights_on')).toMatch(/can still be read/)
  })

  test('rock that still leaks is cured in the dark where nothing else can load the water', () => {
    const answer = climbed({
      system: {
        animals: [],
        feeds: [],
        rock: [{ kind: 'dried ex-ocean', mass_kg: 25, age_days: 60, cured_days: 0 }],
      },
      observations: read(25, 0.9),
    })
    expect(offered(answer).slice(0, 2)).toEqual(['cure_rock_dark', 'water_change_large'])
    expect(reasonAgainst(answer, 'lights_on')).toMatch(/still leaks/)
  })

  test('fish on a lean ration are not fed less, though the water is loaded', () => {
    const answer = climbed({
      system: { feeds: soundReef.feeds.map((feed) => ({ ...feed, g_per_day: 0.8 })) },
      observations: read(40, 0.06),
    })
    expect(reasonAgainst(answer, 'feed_less')).toMatch(/starve/)
  })

  test('animals are named only where they fit, and those of caution only when they are accepted', () => {
    const animals = (withCaution?: 'all'): readonly string[] =>
      climbed({ observations: [...read(5, 0.06), hair], asked: withCaution ? { withCaution } : {} })
        .rungs.flatMap((rung) => rung.animals)
        .map(({ taxon }) => taxon)
    expect(animals()).toContain('Turbo bruneus')
    expect(animals()).not.toContain('Salarias fasciatus')
    expect(animals('all')).toContain('Salarias fasciatus')
    expect(animals('all')).not.toContain('Naso lituratus')
  })

  test('a lamp that kills what swims is not offered against slime that stays in the sand', () => {
    const slime = [...read(5, 0.06), seen('dino', 'rock_face', 0.4)]
    expect(offered(climbed({ observations: slime }))).toContain('uv_on')
    const sand = offered(climbed({ observations: slime, asked: { finer: 'dino_amphidinium' } }))
    expect(sand).not.toContain('uv_on')
    expect(sand).toContain('silicate_dose')
  })

  test('each rung has its cautions before it, its day of judgement and its end', () => {
    const { rungs, cautions, day } = climbed({ system: spent, observations: loaded })
    for (const rung of rungs) {
      expect(rung.judgedOn).toBe(day + rung.days.high)
      expect(rung.cautions.map(({ key }) => key)).toEqual(
        expect.arrayContaining([...measure(rung.measure).cautions]),
      )
      for (const one of rung.cautions) expect(cautions).toContain(caution(one.key))
      expect(rung.ends).not.toBe('')
    }
  })

  test('one that came back begins with what ended it the last time', () => {
    const asked = (worked: string) =>
      offered(climbed({ observations: [...read(5, 0.06), hair], asked: { worked } }))[0]
    expect(asked('Peroxide dip of a loose rock')).toBe('peroxide_dip')
    expect(asked('something nobody knows')).toBe('hand_removal_siphon')
  })
})
