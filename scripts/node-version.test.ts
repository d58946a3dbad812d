import { expect, it } from 'vitest'
import { nodeTooOld } from './node-version.mjs'

it.each(['20.19.0', '20.19.4', '20.20.0', '22.0.0', '100.1.0'])(
  'Node %s is new enough for 20.19',
  (version) => {
    expect(nodeTooOld(version, '>=20.19')).toBeUndefined()
  },
)

it.each(['20.18.3', '18.20.0', '9.99.99'])(
  'Node %s is too old for 20.19, and is told what to do',
  (version) => {
    expect(nodeTooOld(version, '>=20.19')).toMatch(
      new RegExp(`^Node.js ${version} is too old for Holdfast, which needs 20.19 or later. Install`),
    )
  },
)
