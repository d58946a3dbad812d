/** The dated report of a full validation, and what of it is done already. */
import { createHash } from 'node:crypto'
import { existsSync, mkdirSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs'
import { cpus, platform } from 'node:os'
import { join } from 'node:path'
import type { Check } from './check.ts'
import { root } from './experiment/published.ts'

const folder = join(root, 'validation', 'reports')
const progress = join(root, '.build', 'validation.json')

/** What a run rests on: another one is not gone on with. */
export interface Basis {
  readonly commit: string
  /** Whether nothing but the commit was in the folder. */
  readonly clean: boolean
  readonly model: string
  readonly seed: number
}

/** Comparisons that are done, by name. */
type Done = Record<string, readonly Check[]>

/** What an earlier run on the same basis had done when it was stopped. */
export function doneBefore(basis: Basis): Done {
  if (!basis.clean || !existsSync(progress)) return {}
  const held = JSON.parse(readFileSync(progress, 'utf8')) as { readonly basis: Basis; readonly done: Done }
  return JSON.stringify(held.basis) === JSON.stringify(basis) ? held.done : {}
}

/** Keeps what is done, so that a run that is stopped can be gone on with. */
export function keepDone(basis: Basis, done: Done): void {
  mkdirSync(join(root, '.build'), { recursive: true })
  writeFileSync(progress, JSON.stringify({ basis, done }))
}

/** Writes the report. @returns its path */
export function writeReport(basis: Basis, done: Done, at: Date): string {
  mkdirSync(folder, { recursive: true })
  const file = join(folder, `${at.toISOString().slice(0, 16).replace(':', '-')}.md`)
  writeFileSync(file, presentReport(basis, done, at))
  rmSync(progress, { force: true })
  return file
}

/** The text of a report, with its sum. */
export function presentReport({ commit, clean, model, seed }: Basis, done: Done, at: Date): string {
  const all = Object.values(done).flat()
  const count = (outcome: Check['outcome']): number => all.filter((check) => check.outcome === outcome).length
  const text = [
    `# Validation of ${at.toISOString().slice(0, 10)}`,
    '',
    'Written by `npm run validate -- --full`; the last line is the sum of all above it, so that no figure is edited.',
    '',
    `- commit ${commit}${clean ? '' : ', with changes that are not committed'}`,
    `- model ${model}, seed ${seed}`,
    `- ${platform()}, ${cpus().length} cores of ${cpus()[0]?.model.trim() ?? 'an unknown kind'}, Node ${process.versions.node}`,
    `- ${count('passed')} passed, ${count('failed')} failed, ${count('gap')} known gaps, ${count('skipped')} skipped`,
    ...Object.entries(done).flatMap(([name, checks]) => [
      '',
      `## ${name}`,
      '',
      ...checks.map((check) => `- ${check.outcome}: ${check.name}: ${check.says}`),
    ]),
    '',
  ].join('\n')
  return sealed(text)
}

const sum = (text: string): string => createHash('sha256').update(text).digest('hex')
const sealed = (text: string): string => `${text}\nSum: ${sum(text)}\n`

/** Whether a report is as it was written. */
export function isSealed(report: string): boolean {
  const at = report.lastIndexOf('\nSum: ')
  return at >= 0 && report === sealed(report.slice(0, at))
}

/** No report was edited after it was written. */
export function reportsAsWritten(): readonly Check[] {
  const names = existsSync(folder) ? readdirSync(folder).filter((name) => name.endsWith('.md')) : []
  return names.map((name) => {
    const holds = isSealed(readFileSync(join(folder, name), 'utf8'))
    return {
      name: `report ${name}`,
      outcome: holds ? 'passed' : 'failed',
      says: holds ? 'as it was written' : 'edited since it was written; run it anew instead',
    }
  })
}
