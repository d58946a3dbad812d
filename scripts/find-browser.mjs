import { existsSync } from 'node:fs'
import { posix, win32 } from 'node:path'

/**
 * A browser of the Chromium family on this machine. HOLDFAST_BROWSER names one and is then the only
 * one looked at.
 *
 * @param {object} [machine] another machine, in tests
 * @param {string} [machine.platform]
 * @param {Readonly<Record<string, string | undefined>>} [machine.env]
 * @param {(path: string) => boolean} [machine.exists]
 * @returns {string | undefined} the path of the program
 */
export function findBrowser({ platform = process.platform, env = process.env, exists = existsSync } = {}) {
  const named = env.HOLDFAST_BROWSER
  const places = named === undefined || named === '' ? usualPlaces(platform, env) : [named]
  return places.find(exists)
}

/**
 * Firefox on this machine, for the few tests that ask a second engine. HOLDFAST_FIREFOX names one and is then the
 * only one looked at.
 *
 * @param {object} [machine] another machine, in tests
 * @param {string} [machine.platform]
 * @param {Readonly<Record<string, string | undefined>>} [machine.env]
 * @param {(path: string) => boolean} [machine.exists]
 * @returns {string | undefined} the path of the program
 */
export function findFirefox({ platform = process.platform, env = process.env, exists = existsSync } = {}) {
  const named = env.HOLDFAST_FIREFOX
  const places = named === undefined || named === '' ? placesOfFirefox(platform, env) : [named]
  return places.find(exists)
}

/** How the browser is started by tests: it calls nobody, asks nothing, and root has no sandbox. */
export function browserFlags() {
  const quiet = [
    '--disable-background-networking',
    '--disable-component-update',
    '--disable-sync',
    '--no-first-run',
    '--disable-quic',
  ]
  return process.getuid?.() === 0 ? [...quiet, '--no-sandbox'] : quiet
}

/**
 * @param {string} platform
 * @param {Readonly<Record<string, string | undefined>>} env
 * @returns {string[]}
 */
function usualPlaces(platform, env) {
  if (platform === 'darwin') {
    const applications = ['/Applications', posix.join(env.HOME ?? '', 'Applications')]
    return ['Google Chrome', 'Chromium', 'Microsoft Edge'].flatMap((name) =>
      applications.map((folder) => posix.join(folder, `${name}.app`, 'Contents', 'MacOS', name)),
    )
  }
  if (platform === 'win32') {
    const programs = ['PROGRAMFILES', 'PROGRAMFILES(X86)', 'LOCALAPPDATA'].flatMap((name) => env[name] ?? [])
    const browsers = [
      ['Google', 'Chrome', 'Application', 'chrome.exe'],
      ['Chromium', 'Application', 'chrome.exe'],
      ['Microsoft', 'Edge', 'Application', 'msedge.exe'],
    ]
    return browsers.flatMap((browser) => programs.map((folder) => win32.join(folder, ...browser)))
  }
  const names = ['google-chrome', 'google-chrome-stable', 'chromium', 'chromium-browser', 'microsoft-edge']
  return [...onPath(names, env), '/snap/bin/chromium']
}

/**
 * @param {string} platform
 * @param {Readonly<Record<string, string | undefined>>} env
 * @returns {string[]}
 */
function placesOfFirefox(platform, env) {
  if (platform === 'darwin') return ['/Applications/Firefox.app/Contents/MacOS/firefox']
  if (platform === 'win32') {
    const programs = ['PROGRAMFILES', 'PROGRAMFILES(X86)'].flatMap((name) => env[name] ?? [])
    return programs.map((folder) => win32.join(folder, 'Mozilla Firefox', 'firefox.exe'))
  }
  return onPath(['firefox', 'firefox-esr'], env)
}

/**
 * @param {readonly string[]} names
 * @param {Readonly<Record<string, string | undefined>>} env
 * @returns {string[]}
 */
function onPath(names, env) {
  const folders = (env.PATH ?? '').split(':').filter((folder) => folder !== '')
  return names.flatMap((name) => folders.map((folder) => posix.join(folder, name)))
}
