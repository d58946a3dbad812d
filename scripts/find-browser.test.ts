import { describe, expect, it } from 'vitest'
import { browserFlags, findBrowser, findFirefox } from './find-browser.mjs'

describe('a browser', () => {
  it.each([
    ['linux', { PATH: '/usr/local/bin:/usr/bin' }, '/usr/bin/chromium'],
    ['darwin', { HOME: '/nobody' }, '/Applications/Google Chrome.app/Contents/MacOS/Google Chrome'],
    [
      'win32',
      { 'PROGRAMFILES(X86)': 'C:\\Program Files (x86)' },
      'C:\\Program Files (x86)\\Microsoft\\Edge\\Application\\msedge.exe',
    ],
  ])('is found in a usual place of %s', (platform, env, place) => {
    expect(findBrowser({ platform, env, exists: (path) => path === place })).toBe(place)
  })

  it('is the one that HOLDFAST_BROWSER names, and no other', () => {
    const env = { PATH: '/usr/bin', HOLDFAST_BROWSER: '/opt/browser' }
    expect(findBrowser({ platform: 'linux', env, exists: () => true })).toBe('/opt/browser')
    expect(
      findBrowser({ platform: 'linux', env, exists: (path) => path === '/usr/bin/chromium' }),
    ).toBeUndefined()
  })

  it('is not found where there is none', () => {
    expect(findBrowser({ platform: 'linux', env: {}, exists: () => false })).toBeUndefined()
  })

  it('is Firefox where a second engine is asked, in its usual place or as named', () => {
    const exists = (path: string) => path.endsWith('firefox-esr')
    expect(findFirefox({ platform: 'linux', env: { PATH: '/usr/bin' }, exists })).toBe('/usr/bin/firefox-esr')
    expect(
      findFirefox({ platform: 'linux', env: { PATH: '/usr/bin', HOLDFAST_FIREFOX: '/opt/fox' }, exists }),
    ).toBe(undefined)
  })

  it('calls nobody while it is tested', () => {
    expect(browserFlags()).toEqual(
      expect.arrayContaining(['--disable-background-networking', '--disable-sync']),
    )
  })
})
