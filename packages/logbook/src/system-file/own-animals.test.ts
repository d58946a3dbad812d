import { expect, test } from 'vitest'
import { hall } from '../testing/hall.ts'
import { readSystemFile } from './read-system-file.ts'

const changed = (changes: Record<string, unknown>): string => JSON.stringify({ ...hall, ...changes })

test('animals of the keeper’s own are read with their units, and what is wrong with one is told', () => {
  const blenny = {
    taxon: 'Grey blenny',
    like: 'Salarias fasciatus',
    'adult size': '12 cm',
    eats: '0.3 g dry/d',
    'least glass': '40 US gal',
    'least length': '90 cm',
    warmest: '81 °F',
    'reef safe': 'with caution',
    caution: 'Nips at clams',
  }
  const read = readSystemFile(changed({ 'own animals': [{ ...blenny, tastes: { hair_green: 0.9 } }] }))
  expect(read).toHaveProperty('system.own_animals', [
    {
      taxon: 'Grey blenny',
      like: 'Salarias fasciatus',
      adult_size_cm: 12,
      eats_g_per_day: 0.3,
      least_volume_L: expect.closeTo(151.4, 1),
      least_length_cm: 90,
      warmest_C: expect.closeTo(27.22, 2),
      reef_safe: 'with caution',
      caution: 'Nips at clams',
      tastes: { hair_green: 0.9 },
    },
  ])
  const wrong = readSystemFile(
    changed({ 'own animals': [{ ...blenny, eats: '0.3 g', tastes: { hair_green: 2 } }, { ...blenny }] }),
  )
  if (wrong.ok) throw new Error('It was taken.')
  expect(wrong.issues.map(({ where }) => where)).toEqual([
    'own animals 1, eats',
    'own animals 1, tastes, hair_green',
    'own animals',
  ])
  expect(readSystemFile(changed({}))).not.toHaveProperty('system.own_animals')
})
