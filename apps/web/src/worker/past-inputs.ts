import type { OutlookQuestion } from '@holdfast/inference'
import { inputsHash } from './inputs-hash.ts'

/** Names what a past rests on, but for how many members have it: no lever moves it, and it sees nothing ahead. */
export const pastInputs = ({ levers: _levers, ...outlook }: OutlookQuestion): string =>
  inputsHash({ kind: 'outlook', outlook: { ...outlook, horizonDays: 0 } })
