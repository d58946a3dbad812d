import { readdirSync, readFileSync } from 'node:fs'
import { join } from 'node:path'

import { answeredSheet } from './imports/answers.ts'
import {
  lossDifferences,
  noteDifferences,
  oddDifferences,
  questionDifferences,
  readingDifferences,
} from './imports/differences.ts'
import type { Truth } from './imports/truth.ts'

/** How one sheet compares with its truth; no difference means it passes. */
export interface ImportCheck {
  readonly file: string
  readonly readings: number
  readonly notes: number
  readonly differences: readonly string[]
}

/** What the program prints, and its exit code. */
export function importReport(folder: string): {
  readonly lines: readonly string[]
  readonly exitCode: 0 | 1
} {
  const checks = checkImports(folder)
  const failed = checks.filter(({ differences }) => differences.length > 0)
  const passed = checks.length - failed.length
  const lines = failed.flatMap(({ file, differences }) =>
    differences.map((difference) => `FAILED  ${file}: ${difference}`),
  )
  return {
    lines: [...lines, `${passed} passed, ${failed.length} failed`],
    exitCode: failed.length > 0 || passed === 0 ? 1 : 0,
  }
}

/** Compares every sheet in a folder that has a truth file beside it. */
export function checkImports(folder: string): readonly ImportCheck[] {
  return readdirSync(folder)
    .filter((name) => name.endsWith('.truth.json'))
    .sort()
    .map((name) => checkOne(folder, name))
}

/** A sheet or a truth that cannot be read is a failure of its file, and the others are still checked. */
function checkOne(folder: string, name: string): ImportCheck {
  try {
    const truth: Truth = JSON.parse(readFileSync(join(folder, name), 'utf8'))
    return checkImport(readFileSync(join(folder, truth.file)), truth)
  } catch (error) {
    const why = error instanceof Error ? error.message : String(error)
    return { file: name, readings: 0, notes: 0, differences: [why] }
  }
}

function checkImport(bytes: Uint8Array, truth: Truth): ImportCheck {
  const { first, sheet, asked } = answeredSheet(bytes, truth)
  const differences = [
    ...sheet.issues.map((issue) => `issue ${issue.code}`),
    ...questionDifferences(asked, truth),
    ...readingDifferences(sheet, truth),
    ...noteDifferences(sheet, truth),
    ...oddDifferences(sheet, truth),
    ...lossDifferences(first),
    ...lossDifferences(sheet),
  ]
  return { file: truth.file, readings: sheet.readings.length, notes: sheet.notes.length, differences }
}
