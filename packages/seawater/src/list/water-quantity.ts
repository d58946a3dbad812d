import type { Given, InputName } from './water-inputs.ts'

/** What a formula still needs for what it was asked, such as the temperature for a value per litre. */
export interface Needs {
  readonly needs: readonly InputName[]
}

/** One set of inputs from which a quantity follows. */
export interface Form {
  readonly inputs: readonly InputName[]
  readonly value: (given: Given) => number | Needs
}

/** A quantity of sea water by its id, with every set of inputs that gives it. */
export interface WaterQuantity {
  readonly id: string
  readonly says: string
  /** A unit, or how it follows from the inputs; 'same as value' where it goes in and comes out alike. */
  readonly unit: string | ((given: Given) => string)
  readonly forms: readonly Form[]
  /** The public functions it rests on: where to read range, source and accuracy. */
  // biome-ignore lint/complexity/noBannedTypes: only their names are used, whatever they take.
  readonly restsOn: readonly Function[]
}

/** A form whose formula sees the inputs that it names and no other. */
export function form<const Name extends InputName>(
  inputs: readonly Name[],
  value: (given: Given<Name>) => number | Needs,
): Form {
  return { inputs, value }
}
