import { type Model, stateId } from '@holdfast/ecosystem'

/** How far a run is from a reference, as shares: largest over all samples. */
export interface Accuracy {
  readonly nitrate: number
  readonly phosphate: number
  /** Of the cover that a stand of its kind had at most, or of a hundredth of the ground where it had less. */
  readonly cover: number
}

/** Covers below this are all the same to whoever looks at them. */
const leastCover = 0.01

/** Nitrate and phosphate relative to what they are at that very sample. */
export function accuracy(
  model: Model,
  samples: readonly Float64Array[],
  reference: readonly Float64Array[],
): Accuracy {
  const ids = model.states.map(stateId)
  const relative = (id: string): number => {
    const i = ids.indexOf(id)
    return Math.max(...samples.map((sample, k) => Math.abs(sample[i] / reference[k][i] - 1)))
  }
  const covers = ids.flatMap((id, i) => (id.startsWith('cover.') ? [i] : []))
  return {
    nitrate: relative('water.nitrate/N'),
    phosphate: relative('water.phosphate/P'),
    cover: Math.max(
      ...covers.map((i) => {
        const most = Math.max(leastCover, ...reference.map((sample) => sample[i]))
        return Math.max(...samples.map((sample, k) => Math.abs(sample[i] - reference[k][i]))) / most
      }),
    ),
  }
}

export const worst = ({ nitrate, phosphate, cover }: Accuracy): number => Math.max(nitrate, phosphate, cover)
