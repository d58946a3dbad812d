declare module 'virtual:holdfast-kernel' {
  type Numbers = Float64Array
  type Indexes = Int32Array
  /** One process or event, compiled from its declaration. */
  interface CompiledProcess {
    readonly inputs: number
    readonly fluxes: number
    readonly gathers: number
    readonly gather:
      | ((
          y: Numbers,
          s: Numbers,
          p: Numbers,
          g: Numbers,
          ix: Indexes,
          o: number,
          gx: Indexes,
          gf: number,
        ) => void)
      | null
    readonly rates: (
      y: Numbers,
      s: Numbers,
      p: Numbers,
      g: Numbers,
      ix: Indexes,
      o: number,
      out: Numbers,
      f: number,
    ) => void
  }
  export const kernel: Readonly<Record<string, CompiledProcess>>
}
