import list from './data/mouths.json' with { type: 'json' }
import { UnknownKey } from './unknown-key.ts'

export type MouthKey = 'snail' | 'bristletooth' | 'comber' | 'picker' | 'cropper'

/**
 * What a way of biting does to the food within reach, as ids of facts. The whole stand counts up to the full
 * height; above it the share falls in a line to the floor share at the floor height and stays there.
 */
export interface Mouth {
  readonly key: MouthKey
  readonly title: string
  /** Fact in g m⁻². */
  readonly halfSaturation: string
  /** Fact in mm. */
  readonly fullHeight: string
  /** Fact in mm. */
  readonly floorHeight: string
  /** Fact in 1. */
  readonly floorShare: string
}

const all = list as readonly Mouth[]

/** All ways of biting. */
export const mouths = (): readonly Mouth[] => all

/**
 * The way of biting of a key.
 * @throws UnknownKey with the keys there are
 */
export function mouth(key: string): Mouth {
  const found = all.find((one) => one.key === key)
  if (found === undefined)
    throw new UnknownKey(
      'unknown-mouth',
      'Mouth',
      key,
      all.map((one) => one.key),
    )
  return found
}
