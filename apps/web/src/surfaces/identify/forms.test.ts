import { trait } from '@holdfast/facts'
import { fieldKey } from '@holdfast/identification'
import { expect, it } from 'vitest'
import { textures } from '../tuft.tsx'
import { forms } from './forms.ts'

it('every form that may be noted is drawn, no two alike', () => {
  const drawn = trait('form').states.map(({ key }) => forms[key])
  for (const path of drawn) expect(path).toMatch(/^M/)
  expect(new Set(drawn).size).toBe(drawn.length)
})

it('every kind of the key is drawn, and nothing that is no line', () => {
  for (const { key } of fieldKey.kinds) {
    expect(textures[key], key).toMatch(/^M/)
    expect(textures[key], key).not.toMatch(/NaN|undefined/)
  }
})
