import { readFileSync } from 'node:fs'
import { describe, expect, it } from 'vitest'

type Three = readonly [number, number, number]

/**
 * How a screen looks to eyes that lack a kind of cones, on linear sRGB: Machado, Oliveira & Fernandes 2009, IEEE
 * Transactions on Visualization and Computer Graphics 15:1291, doi:10.1109/TVCG.2009.113, severity 1.0. The first
 * two as read in a published implementation, the last as recalled.
 */
const eyes: Readonly<Record<string, readonly [Three, Three, Three]>> = {
  'all cones': [
    [1, 0, 0],
    [0, 1, 0],
    [0, 0, 1],
  ],
  'no red cones (protanopia)': [
    [0.152286, 1.052583, -0.204868],
    [0.114503, 0.786281, 0.099216],
    [-0.003882, -0.048116, 1.051998],
  ],
  'no green cones (deuteranopia)': [
    [0.367322, 0.860646, -0.227968],
    [0.280085, 0.672501, 0.047413],
    [-0.01182, 0.04294, 0.968881],
  ],
  'no blue cones (tritanopia)': [
    [1.255528, -0.076749, -0.178779],
    [-0.078411, 0.930809, 0.147602],
    [0.004733, 0.691367, 0.3039],
  ],
}

const times = (rows: readonly [Three, Three, Three], [x, y, z]: Three): Three => {
  const [a, b, c] = rows.map(([p, q, r]) => p * x + q * y + r * z)
  return [a ?? 0, b ?? 0, c ?? 0]
}

/** Linear sRGB of #rrggbb, 0 to 1 each (IEC 61966-2-1). */
function linear(hex: string): Three {
  const [r, g, b] = [1, 3, 5].map((at) => {
    const value = Number.parseInt(hex.slice(at, at + 2), 16) / 255
    return value <= 0.04045 ? value / 12.92 : ((value + 0.055) / 1.055) ** 2.4
  })
  return [r ?? 0, g ?? 0, b ?? 0]
}

const toXYZ: readonly [Three, Three, Three] = [
  [0.4124, 0.3576, 0.1805],
  [0.2126, 0.7152, 0.0722],
  [0.0193, 0.1192, 0.9505],
]
const white: Three = [0.9505, 1, 1.089]

/** CIE L*a*b* of linear sRGB, under D65. */
function lab(rgb: Three): Three {
  const [x, y, z] = times(toXYZ, rgb).map((value, i) => {
    const share = Math.max(0, value) / (white[i] ?? 1)
    return share > (6 / 29) ** 3 ? Math.cbrt(share) : share / (3 * (6 / 29) ** 2) + 4 / 29
  }) as unknown as Three
  return [116 * y - 16, 500 * (x - y), 200 * (y - z)]
}

const apart = (one: Three, other: Three): number =>
  Math.hypot(...one.map((value, i) => value - (other[i] ?? 0)))

const css = readFileSync(new URL('./paper.css', import.meta.url), 'utf8')
const [day = '', night = ''] = css.split('prefers-color-scheme: dark')

/** The ink of a name as the style sheet has it. */
function ink(name: string, sheet: string): string {
  const found = new RegExp(`--${name}: (#[0-9a-f]{6});`).exec(sheet)?.[1]
  if (found === undefined) throw new Error(`The style sheet has no ink "${name}".`)
  return found
}

/** ΔE*ab of colours that are told apart at a glance side by side; 2.3 is just noticeable. Common practice. */
const atAGlance = 20

const printed = readFileSync(new URL('./print.css', import.meta.url), 'utf8')

describe.each([
  ['by day', day],
  ['by night', night],
  ['on white paper', printed],
])('the inks %s', (_, sheet) => {
  const paper = sheet === printed ? '#ffffff' : ink('paper', sheet)
  it.each(Object.entries(eyes))(
    'are told from each other and from the paper by eyes with %s',
    (_, matrix) => {
      const inks = [paper, ...['nitrogen', 'phosphorus', 'carbon'].map((name) => ink(name, sheet))]
      const seen = inks.map((hex) => lab(times(matrix, linear(hex))))
      for (const [i, one] of seen.entries())
        for (const [j, other] of seen.slice(0, i).entries())
          expect(apart(one, other), `${inks[i]} and ${inks[j]}`).toBeGreaterThan(atAGlance)
    },
  )
})

it('colours measured here are those of the standard: pure red and sRGB white', () => {
  // L*a*b* of the red of sRGB under D65, 53.2, 80.1, 67.2: from memory.
  expect(apart(lab(linear('#ff0000')), [53.2, 80.1, 67.2])).toBeLessThan(0.5)
  expect(apart(lab(linear('#ffffff')), [100, 0, 0])).toBeLessThan(0.1)
})

it('no two elements have the same line, so that they are told apart without colour', () => {
  const pictures = readFileSync(new URL('./pictures.css', import.meta.url), 'utf8')
  const lines = ['P', 'C'].map(
    (atom) =>
      new RegExp(`\\.atom-${atom} \\.fan-median \\{[^}]*stroke-dasharray: ([\\d ]+)`).exec(pictures)?.[1],
  )
  // That of nitrogen is drawn through.
  expect(pictures).not.toMatch(/\.atom-N \.fan-median/)
  expect(new Set([...lines, undefined]).size).toBe(3)
})
