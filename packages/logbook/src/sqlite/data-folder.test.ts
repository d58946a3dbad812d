import { join } from 'node:path'
import { expect, test } from 'vitest'

import { dataFolder } from './data-folder.ts'

const home = join('/', 'home', 'keeper')

test('the log lives where each platform keeps such data', () => {
  expect(dataFolder({ platform: 'linux', home, env: {} })).toBe(join(home, '.local', 'share', 'holdfast'))
  expect(dataFolder({ platform: 'linux', home, env: { XDG_DATA_HOME: join('/', 'data') } })).toBe(
    join('/', 'data', 'holdfast'),
  )
  expect(dataFolder({ platform: 'darwin', home, env: {} })).toBe(
    join(home, 'Library', 'Application Support', 'Holdfast'),
  )
  expect(dataFolder({ platform: 'win32', home, env: { APPDATA: 'roaming' } })).toBe(
    join('roaming', 'Holdfast'),
  )
})

test('the keeper may choose another folder on every platform', () => {
  for (const platform of ['linux', 'darwin', 'win32'] as const) {
    expect(dataFolder({ platform, home, env: { HOLDFAST_DATA: 'chosen', APPDATA: 'roaming' } })).toBe(
      'chosen',
    )
  }
})
