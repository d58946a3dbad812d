import type { PlanIssue } from '@holdfast/crew-plan'
import { grazers } from '@holdfast/facts'
import { named } from '@holdfast/facts/names'

/** An issue of a plan as a sentence; taxa are called by their trade names. */
export function issueText({ code, where, got, accepted, next }: PlanIssue): string {
  // Wishes that clash are told with what would give, which says more than that they clash.
  const limit = accepted === '' || code === 'limits clash' ? '' : `; accepted: ${accepted}`
  return capital(called(`${named(where)} ${named(got)}${limit}. ${next}`))
}

const called = (text: string): string =>
  grazers().reduce((said, { taxon, tradeName }) => said.replaceAll(taxon, tradeName), text)

const capital = (text: string): string => `${text.charAt(0).toUpperCase()}${text.slice(1)}`
