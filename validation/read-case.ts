/** Reads one case and says everything that is wrong with it at once. */
import type { CaseFile } from './case-file.ts'
import {
  caseKeys,
  equipmentKeys,
  equipmentNames,
  eventKeys,
  expectedKeys,
  type Kind,
  partKeys,
  readingKeys,
  type Shape,
  statementKeys,
  systemKeys,
} from './case-keys.ts'

export interface CaseIssue {
  readonly code: 'missing-key' | 'unknown-key' | 'wrong-kind' | 'unknown-name' | 'not-json' | 'order'
  /** Such as 'system.equipment[2] (skimmer).air_flow'. */
  readonly where: string
  readonly got: string
  readonly accepted: string
  readonly next: string
}

/** A case that can be asked, with remarks; or the issues that keep it from being asked. */
export type ReadCase =
  | { readonly read: true; readonly case: CaseFile; readonly issues: readonly CaseIssue[] }
  | { readonly read: false; readonly issues: readonly CaseIssue[] }

/** An unknown key is reported and the case is still asked; anything else stops it. */
const notStopping: readonly CaseIssue['code'][] = ['unknown-key']

export function readCase(text: string): ReadCase {
  let parsed: unknown
  try {
    parsed = JSON.parse(text)
  } catch (error) {
    const got = error instanceof Error ? error.message : String(error)
    return { read: false, issues: [issue('not-json', 'file', got, 'a JSON object', 'Mend the file.')] }
  }
  const issues = issuesOf(parsed)
  if (issues.some(({ code }) => !notStopping.includes(code))) return { read: false, issues }
  return { read: true, case: completed(parsed as CaseFile), issues }
}

/** Lists that a file may leave out stand as empty, so that nobody has to ask again. */
function completed(file: CaseFile): CaseFile {
  const { system, log } = file
  const equipment = (system.equipment ?? []).map((item) => ({
    ...item,
    kind: equipmentNames[item.kind] ?? item.kind,
  }))
  return {
    ...file,
    system: {
      ...system,
      equipment,
      flow: system.flow ?? [],
      surfaces: system.surfaces ?? [],
      rock: system.rock ?? [],
      feeds: system.feeds ?? [],
      animals: system.animals ?? [],
    },
    log: { readings: log.readings ?? [], events: log.events ?? [] },
  }
}

function issuesOf(file: unknown): CaseIssue[] {
  if (!isObject(file)) return [issue('wrong-kind', 'file', typeof file, 'an object', 'Mend the file.')]
  const top = objectIssues('case', file, caseKeys)
  if (top.some(({ code }) => code !== 'unknown-key')) return top
  const system = file.system as Record<string, unknown>
  const log = file.log as Record<string, unknown>
  const order =
    String(file.start) > String(file.asof)
      ? [issue('order', 'asof', String(file.asof), `${file.start} or later`, 'Put start before asof.')]
      : []
  return [
    ...top,
    ...order,
    ...objectIssues('system', system, systemKeys),
    ...Object.entries(partKeys).flatMap(([part, shape]) =>
      listOf(system[part]).flatMap((item, at) => objectIssues(`system.${part}[${at}]`, item, shape)),
    ),
    ...listOf(system.equipment).flatMap((item, at) =>
      kindIssues(`system.equipment[${at}]`, item, equipmentKeys, { '*kind': 'text', ...free }),
    ),
    ...objectIssues('log', log, { readings: 'list', events: 'list' }),
    ...listOf(log.readings).flatMap((item, at) => objectIssues(`log.readings[${at}]`, item, readingKeys)),
    ...listOf(log.events).flatMap((item, at) =>
      kindIssues(`log.events[${at}]`, item, eventKeys, { '*kind': 'text', '*date': 'date', ...free }),
    ),
    ...listOf(file.expert).flatMap((item, at) => statementIssues(`expert[${at}]`, item)),
  ]
}

const free: Shape = { note: 'text', provenance: 'text' }

function kindIssues(
  where: string,
  item: unknown,
  kinds: Readonly<Record<string, Shape>>,
  common: Shape,
): CaseIssue[] {
  if (!isObject(item)) return objectIssues(where, item, common)
  const named = String(item.kind)
  const shape = kinds[equipmentNames[named] ?? named]
  const at = `${where} (${named})`
  if (shape === undefined) {
    const accepted = Object.keys(kinds).join(', ')
    return [issue('unknown-name', `${where}.kind`, named, accepted, 'Use one of these kinds.')]
  }
  // What an equipment change sets are keys of that equipment.
  const changed =
    named === 'equipment change'
      ? { ...equipmentKeys[String(item.equipment)], removed: 'anything' as const }
      : {}
  return objectIssues(at, item, { ...optional(changed), ...common, ...shape })
}

function optional(shape: Shape): Shape {
  return Object.fromEntries(Object.entries(shape).map(([key, kind]) => [key.replace('*', ''), kind]))
}

function statementIssues(where: string, item: unknown): CaseIssue[] {
  const own = objectIssues(where, item, statementKeys)
  if (own.length > 0 || !isObject(item)) return own
  const check = item.check as Record<string, unknown>
  const expected = item.expected as Record<string, unknown>
  const issues: CaseIssue[] = []
  if (typeof check.quantity !== 'string')
    issues.push(issue('missing-key', `${where}.check.quantity`, 'nothing', 'a name', 'Name what is asked.'))
  if (!expectedKeys.some((key) => key in expected))
    issues.push(
      issue(
        'missing-key',
        `${where}.expected`,
        Object.keys(expected).join(', ') || 'nothing',
        expectedKeys.join(', '),
        'Say what is expected.',
      ),
    )
  return issues
}

function objectIssues(where: string, value: unknown, shape: Shape): CaseIssue[] {
  if (!isObject(value)) return [issue('wrong-kind', where, describe(value), 'an object', 'Mend the file.')]
  const missing = Object.keys(shape)
    .filter((key) => key.startsWith('*') && !present(value, key.slice(1)))
    .map((key) =>
      issue('missing-key', `${where}.${key.slice(1)}`, 'nothing', `${shape[key]}`, 'Add this key.'),
    )
  const given = Object.entries(value).flatMap(([key, held]) => {
    const kind = shape[key] ?? shape[`*${key}`]
    if (kind === undefined) {
      const known = Object.keys(shape)
        .map((known) => known.replace('*', ''))
        .join(', ')
      return [issue('unknown-key', `${where}.${key}`, describe(held), known, 'It is not used.')]
    }
    if (held === null || fits(held, kind)) return []
    return [issue('wrong-kind', `${where}.${key}`, describe(held), kind, 'Mend the value.')]
  })
  return [...missing, ...given]
}

function present(value: Record<string, unknown>, key: string): boolean {
  return key in value && value[key] !== null
}

function fits(value: unknown, kind: Kind): boolean {
  switch (kind) {
    case 'text':
      return typeof value === 'string'
    case 'number':
      return typeof value === 'number' && Number.isFinite(value)
    case 'yes or no':
      return typeof value === 'boolean'
    case 'date':
      return typeof value === 'string' && isDate(value)
    case 'list':
      return Array.isArray(value)
    case 'object':
      return isObject(value)
    case 'anything':
      return true
  }
}

function isDate(text: string): boolean {
  const instant = Date.parse(`${text}T00:00:00Z`)
  return Number.isFinite(instant) && new Date(instant).toISOString().startsWith(text)
}

function isObject(value: unknown): value is Record<string, unknown> {
  return typeof value === 'object' && value !== null && !Array.isArray(value)
}

function listOf(value: unknown): readonly unknown[] {
  return Array.isArray(value) ? value : []
}

function describe(value: unknown): string {
  return JSON.stringify(value)?.slice(0, 60) ?? 'nothing'
}

function issue(
  code: CaseIssue['code'],
  where: string,
  got: string,
  accepted: string,
  next: string,
): CaseIssue {
  return { code, where, got, accepted, next }
}
