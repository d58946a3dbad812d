import { algaeKind } from '@holdfast/facts'
import type { Edge } from './shapes.ts'

/** Writes a point that lies so far along the surface and so far off it, px. */
type At = (along: number, off: number) => string

/** Draws what stands so high, px; a sway of -1 to 1 tells neighbours apart. */
type Glyph = (at: At, high: number, sway: number) => string

const layers = (high: number, apart: number): readonly number[] =>
  Array.from({ length: Math.max(1, Math.round(high / apart)) }, (_, i) => (i + 0.5) * apart)

const film: Glyph = (at, high) =>
  layers(high, 3)
    .map((off, i) => `M${at(i % 2 ? -1 : -2.5, off)}L${at(i % 2 ? 2.5 : 1, off)}`)
    .join('')
const hair: Glyph = (at, high, sway) => `M${at(0, 0)}Q${at(4 * sway, high / 2)} ${at(2 * sway, high)}`
const bristle: Glyph = (at, high, sway) => `M${at(0, 0)}L${at(sway, high)}`
const feather: Glyph = (at, high) =>
  `M${at(0, 0)}L${at(0, high)}${layers(high, 4)
    .map((off) => `M${at(-2.5, off + 2)}L${at(0, off)}L${at(2.5, off + 2)}`)
    .join('')}`
const bubble: Glyph = (at, high) => {
  const r = Math.max(1.5, Math.min(5, high / 2))
  return `M${at(-r, r)}Q${at(-r, 2 * r)} ${at(0, 2 * r)}Q${at(r, 2 * r)} ${at(r, r)}Q${at(r, 0)} ${at(0, 0)}Q${at(-r, 0)} ${at(-r, r)}`
}
const cotton: Glyph = (at, high) =>
  [-3, -1, 1, 3].map((to) => `M${at(0, 0)}Q${at(to, high / 3)} ${at(to, high)}`).join('')
const fork: Glyph = (at, high) =>
  `M${at(0, 0)}L${at(0, high / 2)}L${at(-2.5, high)}M${at(0, high / 2)}L${at(2.5, high)}`
const mat: Glyph = (at, high) =>
  layers(high, 5)
    .map((off) => `M${at(-4, off - 2)}Q${at(0, off + 4)} ${at(4, off - 2)}`)
    .join('')
const blade: Glyph = (at, high, sway) =>
  `M${at(0, 0)}Q${at(-4, high / 2)} ${at(sway, high)}Q${at(4, high / 2)} ${at(0, 0)}`
const crust: Glyph = (at, high) => `M${at(-3, 0)}Q${at(0, 2 * Math.min(high, 6))} ${at(3, 0)}`

/** By the growth forms of the catalogue; what is new there is drawn as hair. */
const byForm: Readonly<Record<string, Glyph>> = {
  film,
  filament: hair,
  turf: bristle,
  feather,
  bubble,
  'filament tuft': cotton,
  'wiry turf': fork,
  mat,
  'loose mat with strings': mat,
  'slime mat': mat,
  'runner with fronds': feather,
  upright: blade,
  'crust with lobes': crust,
  crust,
}

/** Path of one tuft of a kind at a point of an outline, from one height above it to another, px. */
export function tuftAt(kind: string, { x, y, nx, ny }: Edge, high: number, sway: number): string {
  const at: At = (along, off) =>
    `${(x - along * ny + off * nx).toFixed(1)} ${(y + along * nx + off * ny).toFixed(1)}`
  return (byForm[algaeKind(kind).form] ?? hair)(at, high, sway)
}

/** What was eaten off above a stubble, as a line of its own. */
export const cutAt = ({ x, y, nx, ny }: Edge, from: number, to: number): string =>
  `M${(x + from * nx).toFixed(1)} ${(y + from * ny).toFixed(1)}L${(x + to * nx).toFixed(1)} ${(y + to * ny).toFixed(1)}`
