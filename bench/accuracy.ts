import { coverOf, type Model, namedStands, stateIndex, typicalParameters } from '@holdfast/ecosystem'

/** How far a run is from a reference, as shares: largest over all samples. */
export interface Accuracy {
  readonly nitrate: number
  readonly phosphate: number
  /** Of the cover that a stand of its kind had at most, or of a hundredth of the ground where it had less. */
  readonly cover: number
}

/** Covers below this are all the same to whoever looks at them. */
const leastCover = 0.01

/** Nitrate and phosphate relative to what they are at that very sample; covers at typical parameters. */
export function accuracy(
  model: Model,
  samples: readonly Float64Array[],
  reference: readonly Float64Array[],
): Accuracy {
  const parameters = typicalParameters(model)
  const relative = (id: string): number => {
    const i = stateIndex(model, id)
    return Math.max(...samples.map((sample, k) => Math.abs(sample[i] / reference[k][i] - 1)))
  }
  return {
    nitrate: relative('water.nitrate/N'),
    phosphate: relative('water.phosphate/P'),
    cover: Math.max(
      ...namedStands(model.system).map(({ of: { stand } }) => {
        const cover = coverOf(model, stand)
        const theirs = reference.map((sample) => cover(sample, parameters))
        const off = samples.map((sample, k) => Math.abs(cover(sample, parameters) - theirs[k]))
        return Math.max(...off) / Math.max(leastCover, ...theirs)
      }),
    ),
  }
}

export const worst = ({ nitrate, phosphate, cover }: Accuracy): number => Math.max(nitrate, phosphate, cover)
