import { describe, expect, test } from 'vitest'
import {
  algaeKinds,
  catalogueAlone,
  caution,
  controls,
  controlsOf,
  finerKind,
  grazer,
  measure,
  measures,
  watchDays,
} from './index.ts'

const rungs = controls().flatMap(({ kind, rungs }) => rungs.map((rung) => ({ kind, ...rung })))

describe('measures', () => {
  test('each that waits says what ends the waiting', () => {
    expect(measures().filter(({ key, stop }) => (key === 'wait') !== (stop !== undefined))).toEqual([])
  })

  test('none shows before it could, and every caution is in the list', () => {
    for (const { days, cautions } of [...measures(), ...rungs]) {
      expect(days.low).toBeLessThanOrEqual(days.high)
      expect(days.high).toBeGreaterThan(0)
      expect(cautions.map((key) => caution(key).key)).toEqual(cautions)
    }
  })

  test('one misspelt is answered with the nearest', () => {
    expect(() => measure('feed_les')).toThrow('feed_less')
  })

  test('medicines are left to a veterinarian, without a dose', () => {
    const medicines = [
      measure('ask_veterinarian'),
      ...rungs.filter((one) => one.measure === 'ask_veterinarian'),
    ]
    for (const { how, cautions } of medicines) {
      expect(cautions).toContain('veterinarian')
      expect(how).not.toMatch(/\d/)
    }
  })

  test('whatever is done with hands in the water says that the mains are out first', () => {
    for (const key of ['hand_removal', 'hand_removal_siphon', 'refugium_remove_dead', 'shade_surface'])
      expect(measure(key).cautions, key).toContain('mains_near_water')
  })
})

describe('controls', () => {
  test('every kind of algae has some, of measures and animals that the catalogue knows', () => {
    expect(algaeKinds().filter(({ key }) => controlsOf(key).length === 0)).toEqual([])
    expect(rungs.filter((rung) => measure(rung.measure) === undefined)).toEqual([])
    expect(rungs.flatMap(({ animals = [] }) => animals).filter((taxon) => !grazer(taxon))).toEqual([])
    const finer = rungs.flatMap(({ onlyFor = [], notFor = [] }) => [...onlyFor, ...notFor])
    expect(finer.filter((key) => !finerKind(key))).toEqual([])
  })

  test('animals come with the warning that they starve and are never released', () => {
    for (const { kind, animals, cautions } of rungs)
      if (animals) expect(cautions, kind).toEqual(expect.arrayContaining(['crew_starves', 'do_not_release']))
  })

  test('peroxide comes with the warning that it stays outside the tank', () => {
    for (const rung of rungs.filter((one) => one.measure === 'peroxide_dip'))
      expect(rung.cautions, rung.kind).toContain('acid_or_bleach')
  })

  test('nobody meets a slime of dinoflagellates without the warning of its poison', () => {
    expect(controlsOf('dino')[0]?.cautions).toContain('palytoxin')
  })

  test('a stubborn kind is watched longer after it is gone, and none under twelve weeks', () => {
    expect(watchDays('hair_green', catalogueAlone)).toBe(84)
    expect(watchDays('bryopsis', catalogueAlone)).toBeGreaterThan(84)
    expect(watchDays(undefined, catalogueAlone)).toBe(84)
  })

  test('nothing that is done about slime throws bubbles or drops into the air', () => {
    for (const kind of ['dino', 'chrysophyte', 'cyano'])
      for (const { how, title } of controlsOf(kind))
        expect(how, title).not.toMatch(/air stone|baster|spray it/i)
    expect(caution('oxygen_at_night').says).toMatch(/only where there is no slime/)
  })

  test('what is taken out by hand never goes into a drain or the sea', () => {
    for (const { key, cautions } of measures().filter((one) => one.key.startsWith('hand_removal')))
      expect(cautions, key).toContain('do_not_release')
  })
})
