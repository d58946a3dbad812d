/** Asks every statement of every case in a folder and says what does not hold. */
import { readdirSync, readFileSync } from 'node:fs'
import { join } from 'node:path'
import { ask, type Outcome, shownExpectation, unreadKeys } from './ask.ts'
import type { ModelAnswers } from './model-answers.ts'
import { type CaseIssue, readCase } from './read-case.ts'

export interface Report {
  readonly lines: readonly string[]
  /** 1 if anything failed, if a file could not be read, or if nothing passed. */
  readonly exitCode: number
}

/** Asks all that a folder holds. */
export function checkCases(directory: string, model: ModelAnswers): Report {
  const lines: string[] = []
  const outcomes: Outcome[] = []
  for (const name of caseFiles(directory, lines)) {
    const read = readCase(readFileSync(join(directory, name), 'utf8'))
    for (const issue of read.issues) lines.push(`${read.read ? 'note' : 'FAILED'}  ${name}: ${words(issue)}`)
    if (!read.read) {
      outcomes.push({ result: 'failed', got: 'not read' })
      continue
    }
    for (const statement of read.case.expert) {
      const where = `${read.case.id} ${statement.id}`
      for (const key of unreadKeys(statement))
        lines.push(`note  ${where}: ${statement.check.quantity} does not read the key "${key}" of its check.`)
      const outcome = ask(read.case, statement, model)
      outcomes.push(outcome)
      if (outcome.result === 'failed')
        lines.push(
          `FAILED  ${where} (${statement.strength}): ${statement.statement}`,
          `        ${statement.check.quantity}: expected ${shownExpectation(statement.expected)}, got ${outcome.got}`,
        )
    }
  }
  const count = (result: Outcome['result']) => outcomes.filter((outcome) => outcome.result === result).length
  const [passed, failed, skipped] = [count('passed'), count('failed'), count('skipped')]
  return {
    lines: [...lines, ...skips(outcomes), `${passed} passed, ${failed} failed, ${skipped} skipped`],
    exitCode: failed > 0 || passed === 0 ? 1 : 0,
  }
}

function caseFiles(directory: string, lines: string[]): readonly string[] {
  try {
    return readdirSync(directory)
      .filter((name) => name.endsWith('.json'))
      .sort()
  } catch {
    lines.push(`Folder: "${directory}" cannot be read. Give a folder that holds cases as *.json.`)
    return []
  }
}

/** 'skipped: 12 crew, 5 ladder', most first. */
function skips(outcomes: readonly Outcome[]): readonly string[] {
  const counts = new Map<string, number>()
  for (const outcome of outcomes)
    if (outcome.result === 'skipped') counts.set(outcome.because, (counts.get(outcome.because) ?? 0) + 1)
  if (counts.size === 0) return []
  const named = [...counts].sort((a, b) => b[1] - a[1]).map(([part, count]) => `${count} ${part}`)
  return [`skipped: ${named.join(', ')}`]
}

function words({ where, got, accepted, next, code }: CaseIssue): string {
  const what =
    code === 'unknown-key' ? `is a key that is not known (${got}). Known: ` : `is ${got}. Accepted: `
  return `${where} ${what}${accepted || 'none'}. ${next}`
}
