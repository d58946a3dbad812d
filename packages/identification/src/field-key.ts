import {
  algaeKind,
  complaintShare,
  kindsOfKey,
  lookAlikes,
  responses,
  traitChance,
  traits,
} from '@holdfast/facts'
import type { Key } from './key.ts'

/** The kinds that come as slime and may be toxic. */
export const slimeKinds: readonly string[] = ['dino', 'chrysophyte', 'cyano']

const age = 'age_of_system'

const titleOf = (kind: string): string =>
  kind === 'not_algae' ? 'an animal or bacteria, no alga' : algaeKind(kind).title

/** The key of all growths: sixteen kinds, what is no alga among them. */
export const fieldKey: Key = {
  kinds: kindsOfKey().map((key) => ({ key, title: titleOf(key) })),
  traits: traits(),
  chance: traitChance,
  frequency: (kind, answers) => complaintShare(kind, answers[age]),
  inFrequency: [age],
  responses: responses(),
  lookAlikes: lookAlikes(),
  slime: slimeKinds,
  // Among these the measures point in opposite directions, and the eye is deceived.
  microscopeAmong: [...slimeKinds, 'film_diatom'],
}
