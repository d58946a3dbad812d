/** An alga that people grow under a lamp to take nutrients out; its numbers are the facts `alg.<key>.<what>`. */
export interface CultivatedAlga {
  readonly key: 'chaeto' | 'ulva' | 'gracil' | 'caul' | 'turf'
  readonly title: string
  /** Words it goes by, lower case. */
  readonly names: readonly string[]
}

const all: readonly CultivatedAlga[] = [
  { key: 'chaeto', title: 'Chaetomorpha', names: ['chaetomorpha', 'chaeto'] },
  { key: 'ulva', title: 'Ulva', names: ['ulva', 'sea lettuce'] },
  { key: 'gracil', title: 'Gracilaria', names: ['gracilaria', 'ogo'] },
  { key: 'caul', title: 'Caulerpa', names: ['caulerpa'] },
  { key: 'turf', title: 'Turf on a screen', names: ['turf', 'turf algae'] },
]

/** The alga that a name begins with (a species name counts as its genus); undefined where there are no figures. */
export function cultivatedAlga(name: string): CultivatedAlga | undefined {
  const word = name.trim().toLowerCase()
  return all.find(({ names }) => names.some((one) => word === one || word.startsWith(`${one} `)))
}
