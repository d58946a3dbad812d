import type { Issue } from '../issue.ts'
import type { z } from './schema.ts'

type SchemaIssue = z.core.$ZodIssue

/** What a schema found wrong with a value, in plain words; `where` names the whole. */
export function schemaIssues(error: z.core.$ZodError, where: string, value: unknown): readonly Issue[] {
  return error.issues.map((issue) => {
    const got = shown(at(value, issue.path))
    const place = issue.path.length === 0 ? where : `${where}: ${issue.path.map(String).join('.')}`
    return {
      code: issue.code,
      where: place,
      got: `${got} does not fit`,
      accepted: acceptedBy(issue),
      next: 'Nothing was stored.',
    }
  })
}

function acceptedBy(issue: SchemaIssue): string {
  switch (issue.code) {
    case 'invalid_type':
      return `Of type ${issue.expected}.`
    case 'invalid_value':
      return `One of: ${issue.values.map(String).join(', ')}.`
    case 'too_small':
      return `${issue.inclusive ? 'At least' : 'More than'} ${issue.minimum}.`
    case 'too_big':
      return `${issue.inclusive ? 'At most' : 'Less than'} ${issue.maximum}.`
    case 'invalid_format':
      return fieldOf(issue) ?? `A text of the form ${issue.format}.`
    default:
      return fieldOf(issue) ?? 'The form is in the schema of the kind.'
  }
}

/** What fields with a form of their own hold. */
const forms: Readonly<Record<string, string>> = {
  at: 'A date of the calendar, or a date and time with offset and zone, such as 2026-03-01T08:10+01:00[Europe/Berlin].',
  precision: '"day" for a date, "minute" for a date and time.',
  timeZone: 'A zone of the IANA list, such as Europe/Berlin or America/Chicago.',
}

const fieldOf = ({ path }: SchemaIssue): string | undefined => forms[String(path.at(-1))]

function at(value: unknown, path: readonly PropertyKey[]): unknown {
  return path.reduce<unknown>(
    (found, key) => (typeof found === 'object' && found !== null ? Reflect.get(found, key) : undefined),
    value,
  )
}

const shown = (value: unknown): string => (JSON.stringify(value) ?? 'nothing').slice(0, 60)
