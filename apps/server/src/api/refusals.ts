import type { Issue } from '@holdfast/logbook'
import type { z } from 'zod'

const unchanged = 'Nothing was changed.'

/** A system that is asked for and not there. */
export const noSystem = (id: string): Issue => ({
  code: 'no-system',
  where: 'System',
  got: `"${id.slice(0, 100)}" is not in this log`,
  accepted: 'Choose one of api/systems.',
  next: '',
})

/** What is wrong with the fields of an address; each schema says in its description what it takes. */
export function fieldIssues(error: z.ZodError, fields: z.ZodObject, given: Record<string, string>): Issue[] {
  return error.issues.map(({ path }) => {
    const name = String(path[0] ?? 'address')
    return {
      code: 'not-understood',
      where: name,
      got: `"${(given[name] ?? '').slice(0, 100)}" is not understood`,
      accepted: fields.shape[name]?.description ?? 'A value as in api/openapi.json.',
      next: unchanged,
    }
  })
}

export const wrongType = (type: string): Issue => ({
  code: 'wrong-type',
  where: 'content-type',
  got: type === '' ? 'there is none' : `"${type.slice(0, 100)}" is not taken here`,
  accepted: 'application/json.',
  next: unchanged,
})

export const notJson: Issue = {
  code: 'no-json',
  where: 'Request',
  got: 'it is no JSON',
  accepted: 'A JSON document as in api/openapi.json.',
  next: unchanged,
}

/** @param most  bytes */
export const tooLarge = (most: number): Issue => ({
  code: 'too-large',
  where: 'Request',
  got: 'it is too large',
  accepted: `Up to ${Math.floor(most / 1024)} kB at once.`,
  next: `Send it in parts. ${unchanged}`,
})

export const nothingAt = (path: string): Issue => ({
  code: 'nothing-there',
  where: 'Address',
  got: `there is nothing at ${path.slice(0, 200)}`,
  accepted: 'The addresses of api/openapi.json.',
  next: '',
})

/** A failure of the program: what it was is for whoever mends it, and never for the page. */
export const failed: Issue = {
  code: 'failed',
  where: 'Holdfast',
  got: 'something failed in it',
  accepted: '',
  next: 'The window in which it was started says what.',
}
