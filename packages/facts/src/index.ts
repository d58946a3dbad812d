export { type AlgaeKind, algaeKind, algaeKinds } from './algae-kind.ts'
export { fact, facts } from './catalogue.ts'
export { type Caution, caution, cautions } from './caution.ts'
export { complaintShare, complaintsKnownBy } from './complaint.ts'
export { type Control, controls, controlsOf } from './control.ts'
export { type CoralBand, coralBand, coralBands } from './coral-band.ts'
export {
  type CrewCondition,
  type CrewPool,
  chargedHazard,
  crewConditions,
  crewPools,
  stubbornKind,
  wantedKind,
} from './crew-rules.ts'
export { type CultivatedAlga, cultivatedAlga } from './cultivated-alga.ts'
export type { Fact, Provenance, Range } from './fact.ts'
export { familyOf } from './family.ts'
export { type FeedKind, feedKind, feedKinds } from './feed-kind.ts'
export { type FinerKind, type FinerKinds, finerKind, finerKinds, finerKindsOf } from './finer-kind.ts'
export {
  type ConsumptionRule,
  consumptionRules,
  finned,
  type Grazer,
  type GrazerGroup,
  grazer,
  grazers,
  type Stocking,
} from './grazer.ts'
export { consumptionId, mortalityId, needId } from './grazer-facts.ts'
export { howKnown, type Reference, referencesOf } from './in-words.ts'
export { type LookAlike, lookAlikes, lookAlikesKnownBy } from './look-alike.ts'
export { type Evidence, type Measure, measure, measures } from './measure.ts'
export { type Mouth, type MouthKey, mouth, mouths } from './mouth.ts'
export {
  type Circumstances,
  exposed,
  holds,
  type Neighbour,
  neighbours,
  neighboursNamed,
  type Threat,
  type ThreatRole,
} from './neighbour.ts'
export { hunting, predationId } from './neighbour-facts.ts'
export {
  catalogueAnimals,
  type KnownAnimals,
  type OwnAnimal,
  type OwnAnimalIssue,
  withOwnAnimals,
} from './own-animal.ts'
export { catalogueAlone, type FactsOfSystem, factsOfSystem, type OwnFact } from './own-fact.ts'
export {
  type Condition,
  conditionsOf,
  objections,
  type PairObjection,
  type PairRule,
  type Party,
  pairRules,
} from './pair-rule.ts'
export { type Response, responses } from './response.ts'
export { factsHolding } from './search.ts'
export { type Source, source, sources } from './source.ts'
export {
  type PatchKey,
  patchShares,
  type SurfaceKindFacts,
  type SurfaceKindKey,
  surfaceKind,
  surfaceKinds,
} from './surface-kind.ts'
export { type Taste, taste } from './taste.ts'
export { type Trait, type TraitState, trait, traits } from './trait.ts'
export { kindsOfKey, leastChance, type TraitChances, traitChance, traitChances } from './trait-chance.ts'
export { UnknownKey, type UnknownKeyIssue } from './unknown-key.ts'
export { watchDays } from './watch-days.ts'
export { weakest } from './weakest.ts'
export { finenessOf, meant, type Whom, whom } from './whom.ts'
