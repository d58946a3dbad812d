import { type Context, Hono } from 'hono'
import { bodyLimit } from 'hono/body-limit'
import type { ContentfulStatusCode } from 'hono/utils/http-status'
import type { z } from 'zod'
import type { Declared } from '../guard.ts'
import { fieldIssues, notJson, tooLarge, wrongType } from './refusals.ts'
import type { Asked, Brought, Route, Services } from './route.ts'

/** The routes as an app that answers under their addresses. */
export function mounted(routes: readonly Route[], services: Services): Hono {
  const api = new Hono()
  for (const one of routes) {
    const limit = one.brings?.most ?? 0
    const limited = bodyLimit({
      maxSize: limit,
      onError: (context) => context.json({ issues: [tooLarge(limit)] }, 413),
    })
    api.on(one.method.toUpperCase(), honoPath(one.at), limited, (context) => answered(one, context, services))
  }
  return api
}

/** Which methods each address takes, for the guard. */
export function declaredOf(routes: readonly Route[]): readonly Declared[] {
  return routes.map(({ at, method }) => ({
    at: new RegExp(`^${at.replaceAll('.', '\\.').replaceAll(/\{\w+\}/g, '[^/]+')}$`),
    methods: [method.toUpperCase()],
  }))
}

/** /api/systems/{system} as the router writes it. */
export const honoPath = (at: string): string => at.replaceAll(/\{(\w+)\}/g, ':$1')

async function answered(one: Route, context: Context, services: Services): Promise<Response> {
  const path = understood(one.path, context.req.param())
  const query = understood(one.query, context.req.query())
  const issues = [path, query].flatMap((part) => ('issues' in part ? part.issues : []))
  if ('issues' in path || 'issues' in query) return context.json({ issues }, 400)
  const brought = await broughtBy(context, one.brings)
  if (brought instanceof Response) return brought
  const asked: Asked<z.ZodObject, z.ZodObject> = { path: path.fields, query: query.fields, ...brought }
  const { status, body, headers } = await one.answer(asked, services)
  const code = status as ContentfulStatusCode
  // Not every body is an object to the compiler, which sees the declarations of all routes at once.
  return body instanceof Uint8Array || body instanceof ReadableStream
    ? context.body(body as Uint8Array<ArrayBuffer> | ReadableStream, code, headers)
    : context.json(body, code, headers)
}

type Understood = { readonly fields: Record<string, unknown> } | { readonly issues: readonly object[] }

function understood(fields: z.ZodObject | undefined, given: Record<string, string>): Understood {
  if (fields === undefined) return { fields: {} }
  const read = fields.safeParse(given)
  return read.success ? { fields: read.data } : { issues: fieldIssues(read.error, fields, given) }
}

/** What a request brought, or the refusal of it. */
async function broughtBy(
  context: Context,
  brings: Brought | undefined,
): Promise<{ readonly body: unknown; readonly type: string } | Response> {
  const type = context.req.header('content-type') ?? ''
  if (brings === undefined) return { body: undefined, type }
  if (brings.schema === undefined) return { body: new Uint8Array(await context.req.arrayBuffer()), type }
  // A page elsewhere cannot send this type without asking first, which nothing here answers.
  if (type.split(';')[0]?.trim().toLowerCase() !== 'application/json')
    return context.json({ issues: [wrongType(type)] }, 415)
  try {
    return { body: await context.req.json(), type }
  } catch {
    return context.json({ issues: [notJson] }, 400)
  }
}
