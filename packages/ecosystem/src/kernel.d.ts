declare module 'virtual:holdfast-kernel' {
  /** What a line of a table of addresses points at. */
  export type Place =
    | { readonly input: number }
    | { readonly gather: number }
    | { readonly from: number }
    | { readonly to: number }
    | 'volume'

  /** One process or event, compiled from its declaration: what its part of the memory is to hold. */
  export interface CompiledProcess {
    readonly index: number
    /** Worked out a few times a day; the others in short steps between. */
    readonly slow: boolean
    /** Addresses that are needed when settings change, once and for each instance. */
    readonly fixedShared: readonly Place[]
    readonly fixedEach: readonly Place[]
    /** Addresses that are needed at every evaluation. */
    readonly liveShared: readonly Place[]
    readonly liveEach: readonly Place[]
    /** Numbers held between changes of settings, and numbers that the sums hand on to the rates. */
    readonly heldShared: number
    readonly heldEach: number
    readonly kept: number
    readonly sums: number
    /** Inputs that its sums are made of. */
    readonly summed: readonly number[]
    readonly fluxes: number
  }
  export const kernel: Readonly<Record<string, CompiledProcess>>
  /** The module, in base 64. */
  export const binary: string
}
