import { holdfastClient, type Outcome } from '@holdfast/client'
import { issueInWords } from '@holdfast/logbook'

/** The API of the server that gave this page; relative to the page, wherever it was put. */
export const api = holdfastClient(new URL('.', location.href).href.replace(/\/$/, ''))

/** What was asked for. @throws Error with a sentence for the page where the server does not answer or refuses */
export function told<Data>(answer: Outcome<Data>): Data {
  if (answer.ok) return answer.data
  throw new Error(answer.answered ? answer.issues.map(issueInWords).join(' ') : silence)
}

const silence = 'Holdfast does not answer. Start it again on its machine.'
