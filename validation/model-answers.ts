/** What the model is asked for a case. Every answer is a number or a word; a median where there is a spread. */
import type { Commissioning } from '@holdfast/commissioning'
import type { CaseFile } from './case-file.ts'

export type Atom = 'N' | 'P'

/** Amounts that crossed the border of the system over a span, mg of the atom, by the case's own names. */
export interface Budget {
  readonly days: number
  readonly inputs: ReadonlyMap<string, number>
  readonly exports: ReadonlyMap<string, number>
  /** Into the dissolved pools, from what is not water. */
  readonly toWater: ReadonlyMap<string, number>
  /** Net from an inside account to the dissolved pools. */
  readonly netToWater: ReadonlyMap<string, number>
  /** End less start of an inside account, and what it held at the start. */
  readonly stored: ReadonlyMap<string, { readonly change_mg: number; readonly start_mg: number }>
  /** Nitrate ions (N) taken directly, by process; empty for P. */
  readonly nitrateTaken: ReadonlyMap<string, number>
}

export type Course = 'nitrate' | 'phosphate'

/** A level and how far it moves, mg/L of the ion. */
export interface Move {
  readonly start: number
  readonly change: number
}

/** Levers of a response: a factor on today's husbandry. */
export interface Lever {
  readonly lever: 'feed' | 'foam_rate' | 'carbon_dose'
  readonly factor: number
}

/** Animals that a crew has, by taxon. */
export type Counts = ReadonlyMap<string, number>

/** What a plan proposes for a case. */
export interface ProposedCrew {
  /** All that live there when the plan is carried out; empty where no animal is to come yet. */
  readonly crew: Counts
  readonly firstStep: Counts
  /** Does anybody starve within so many days. */
  readonly hungryWithin: (days: number) => boolean
}

/** What a ladder offers and warns of, in its order. */
export interface OfferedLadder {
  readonly measures: readonly string[]
  readonly cautions: readonly string[]
  /** The measure that stands last, where a warning stands with it. */
  readonly lastWithWarning?: string
}

/** Why the model gives no answer. */
export interface NoModel {
  readonly skipped: 'model'
}

export interface ModelAnswers {
  /** @param from ISO date @param to ISO date */
  budget(file: CaseFile, atom: Atom, from: string, to: string): Budget | NoModel
  /** Median of the outlook on `day` days after asof, mg/L of the ion; day 0 is asof itself. */
  outlook(file: CaseFile, of: Course, days: number, lever?: Lever): number | NoModel
  /** Where the water stands, as means over one interval between changes, and how far it moves in so many days. */
  move(file: CaseFile, of: Course, days: number): Move | NoModel
  /** Median cover of a kind at a surface, 0 to 1, `days` after asof. */
  cover(file: CaseFile, surface: string, algae: string, days: number, lever?: Lever): number | NoModel
  /** mg/L NO3 just before and after a change once husbandry has levelled off. */
  equilibrium(file: CaseFile, lever?: Lever): { readonly before: number; readonly after: number } | NoModel
  /** Days from placing until under a tenth of the fresh uptake is left; Infinity if not by `daysAhead` after asof. */
  mediaExhaustedAfter(file: CaseFile, daysAhead: number): number | NoModel
  /** mg PO4 that the media took in the span. */
  takenByMedia(file: CaseFile, from: string, to: string): number | NoModel
  /** Share of the drop of phosphate by a water change today that is undone after `days`. */
  reboundOfChange(file: CaseFile, days: number): number | NoModel
  /** Of a kind at a surface today: growth before grazing, d⁻¹, and the cover gained in two weeks, 0 where no survey would see it. */
  growth(
    file: CaseFile,
    surface: string,
    algae: string,
  ): { readonly gross: number; readonly net: number } | NoModel
  /** Growth of a surface that nobody eats in the coming week, g dry a day, by surface. */
  ungrazed(file: CaseFile): ReadonlyMap<string, number> | NoModel
  /** Most that the animals that are there can eat at a surface, mg dry a day. */
  grazingCapacity(file: CaseFile, surface: string): number | NoModel
  proposedCrew(file: CaseFile): ProposedCrew | NoModel
  /** Does anybody of those that are there starve within so many days. */
  hungry(file: CaseFile, days: number): boolean | NoModel
  /** Most animals of these taxa that the vessel of the crew has room for. */
  mostOfCrew(file: CaseFile, taxa: readonly string[]): number | NoModel
  /** The measures for the water and the growth today. */
  ladder(file: CaseFile): OfferedLadder | NoModel
  /** Scarcest of what bacteria on dosed carbon grow on today. */
  limitingBacteria(file: CaseFile): 'N' | 'P' | 'C' | NoModel
  /** Course of the start-up, and what stands before the first animals. */
  commissioning(file: CaseFile): Commissioning | NoModel
  /** Scarcest of what the kind grows on today. */
  limiting(file: CaseFile, algae: string): 'N' | 'P' | 'C' | 'light' | NoModel
}

const noModel: NoModel = { skipped: 'model' }

/** Stands in where there is no model to ask. */
export const withoutModel: ModelAnswers = {
  budget: () => noModel,
  outlook: () => noModel,
  move: () => noModel,
  cover: () => noModel,
  equilibrium: () => noModel,
  mediaExhaustedAfter: () => noModel,
  takenByMedia: () => noModel,
  reboundOfChange: () => noModel,
  growth: () => noModel,
  ungrazed: () => noModel,
  grazingCapacity: () => noModel,
  proposedCrew: () => noModel,
  hungry: () => noModel,
  mostOfCrew: () => noModel,
  ladder: () => noModel,
  limitingBacteria: () => noModel,
  commissioning: () => noModel,
  limiting: () => noModel,
}

export function isNoModel(answer: unknown): answer is NoModel {
  return typeof answer === 'object' && answer !== null && 'skipped' in answer
}
