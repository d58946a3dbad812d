/** Where a value comes from: seen in its source, recalled from it, keepers' rule of thumb, or made here. */
export type Provenance = 'read' | 'memory' | 'common practice' | 'estimate'

/** Three numbers read as the 5 %, the middle and the 95 % of a prior for one tank. */
export interface Range {
  readonly low: number
  readonly typical: number
  readonly high: number
}

/** A value with its spread, unit, source and conditions. Equal numbers are an exact constant. */
export interface Fact extends Range {
  /** A path a person can guess, such as foam.k.tank; never reused. */
  readonly id: string
  readonly title: string
  /** Text that `parseUnit` of @holdfast/quantities accepts. Masses of feed and algae are dry unless `holds` says otherwise. */
  readonly unit: string
  /** Key of the source of the number. */
  readonly source: string
  /** Keys of further sources. */
  readonly also?: readonly string[]
  readonly provenance: Provenance
  /** Conditions under which the value holds. */
  readonly holds: string
  /** What of it was read or set here; for an estimate, how it was made. */
  readonly note?: string
  /** Prior probability of exactly zero where `low` is 0; 0.2 where it is not given. */
  readonly zeroShare?: number
  /** True where the value may be negative. */
  readonly signed?: boolean
  /** Why no formula reads it and what it is there for; without it, setting the fact moves something. */
  readonly aside?: string
  /** A retired fact stays for old logs and names what replaces it in `see`. */
  readonly retired?: boolean
  readonly see?: string
}
