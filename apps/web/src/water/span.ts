import type { SystemData } from '../shell/system-data.ts'
import type { Span } from '../worker/answers.ts'

export const spanChoices = ['30', '90', '365', 'all'] as const
export type SpanChoice = (typeof spanChoices)[number]

export const spanWords: Readonly<Record<SpanChoice, string>> = {
  '30': 'Last 30 days',
  '90': 'Last 90 days',
  '365': 'Last year',
  all: 'Whole log',
}

/** A span never reaches back before the log. */
export function spanOf(choice: SpanChoice, { from, asOf }: Pick<SystemData, 'from' | 'asOf'>): Span {
  return { from: choice === 'all' ? from : Math.max(from, asOf - Number(choice)), to: asOf }
}

export const isSpanChoice = (text: string | null): text is SpanChoice =>
  spanChoices.some((choice) => choice === text)
