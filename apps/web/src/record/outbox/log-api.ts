import { outcome } from '@holdfast/client'
import { type Entry, type Issue, issueInWords, type JournalLine } from '@holdfast/logbook'
import { api, told } from '../../shell/api.ts'
import type { Receipt } from './outbox.ts'

/** Sends one entry. What is no word of the log about it is no answer, and the same id may go again. */
export async function sendEntry(entry: Entry): Promise<Receipt> {
  const sent = await outcome(api.POST('/api/entries', { body: { entries: [entry] } }))
  if (sent.ok) {
    const { added, already } = sent.data
    return [...added, ...already].includes(entry.id) ? { is: 'stored' } : { is: 'no answer' }
  }
  if (sent.answered && isRefusal(sent.status)) return { is: 'refused', issues: sent.issues.map(inOneEntry) }
  return { is: 'no answer' }
}

/** The server is well and will say the same again; where it fails or is too busy, it may not. */
const isRefusal = (status = 0): boolean => status >= 400 && status < 500 && ![408, 429].includes(status)

/** One entry is sent at a time, so that its number among those sent says nothing. */
const inOneEntry = (issue: Issue): string => issueInWords(issue).replace(/^Entry 1, /, '')

/** One entry with what became of it. @throws Error with a sentence for the page */
export const fetchLine = async (id: string): Promise<JournalLine> =>
  told(await outcome(api.GET('/api/entries/{id}', { params: { path: { id } } })))

/** @throws Error with a sentence for the page */
export async function fetchLines(
  system: string,
  { words, limit }: { readonly words: string; readonly limit: number },
): Promise<{ readonly lines: readonly JournalLine[]; readonly more: boolean }> {
  const search = words.trim()
  let lines: readonly JournalLine[] = []
  let before: string | undefined
  do {
    const query = {
      limit: Math.min(limit - lines.length, atOnce),
      ...(search !== '' && { words: search }),
      ...(before !== undefined && { before }),
    }
    const asked = api.GET('/api/systems/{system}/entries', { params: { path: { system }, query } })
    const page = told(await outcome(asked))
    lines = [...lines, ...page.lines]
    before = page.next
  } while (before !== undefined && lines.length < limit)
  return { lines, more: before !== undefined }
}

/** The most lines that the API gives at once. */
const atOnce = 1000
