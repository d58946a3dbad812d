/**
 * The scales of pH in sea water. At S 35, 25 °C the same water reads on free 0.108 above total, on seawater
 * 0.010 below it, on NBS (a probe set with buffers of fresh water) about 0.137 above it.
 */
export type PHScale = 'total' | 'free' | 'seawater' | 'NBS'

/** A pH that cannot be taken for one of another scale; total, free and seawater count mol per kg of solution. */
export interface PH<Scale extends PHScale = PHScale> {
  readonly scale: Scale
  readonly value: number
}

/** @example pH('total', 8.1) */
export function pH<Scale extends PHScale>(scale: Scale, value: number): PH<Scale> {
  return { scale, value }
}
