import { pageHeaders } from '@holdfast/page-headers'
import type { MiddlewareHandler } from 'hono'

/** Puts the headers on every answer, refusals and failures among them. */
export const withHeaders: MiddlewareHandler = async (context, next) => {
  await next()
  for (const [name, value] of Object.entries(pageHeaders)) context.res.headers.set(name, value)
}

const names = new Set(['localhost', '127.0.0.1', '[::1]'])

/**
 * Answers this machine's own pages only. A page elsewhere could point a name of its own at this
 * address; it would still send that name as Host, or its own as Origin.
 */
export const ownPagesOnly: MiddlewareHandler = async (context, next) => {
  // A request made in memory has its host in the address alone.
  const host = context.req.header('host') ?? new URL(context.req.url).host
  if (!names.has(host.replace(/:\d+$/, '').toLowerCase())) {
    return context.text(
      `Host: "${host.slice(0, 100)}" is not this machine. Open Holdfast as http://localhost with the port it printed.\n`,
      403,
    )
  }
  const origin = context.req.header('origin')
  if (origin !== undefined && origin.toLowerCase() !== `http://${host.toLowerCase()}`) {
    return context.text(
      `Origin: "${origin.slice(0, 100)}" is another site. Only pages of this Holdfast may ask it.\n`,
      403,
    )
  }
  // Browsers say of each request whether a page of the same origin made it; other programs say nothing.
  const site = context.req.header('sec-fetch-site')
  const { method } = context.req
  if (site !== undefined && !['same-origin', 'none'].includes(site) && !['GET', 'HEAD'].includes(method)) {
    return context.text('Another site asked for a change. Only pages of this Holdfast may.\n', 403)
  }
  return next()
}

/** An address that is declared, as a pattern, and the methods that it takes. */
export interface Declared {
  readonly at: RegExp
  readonly methods: readonly string[]
}

/** Lets through GET and HEAD, and what else the routes declare for their addresses. */
export function declaredMethods(declared: readonly Declared[]): MiddlewareHandler {
  return (context, next) => {
    const { method, path } = context.req
    const found = declared.filter(({ at }) => at.test(path)).flatMap(({ methods }) => methods)
    const methods = found.length === 0 ? ['GET'] : found
    const allowed = methods.includes('GET') ? [...methods, 'HEAD'] : methods
    if (allowed.includes(method)) return next()
    const words = `${method.slice(0, 20)}: this address takes ${allowed.join(', ')} only.\n`
    return Promise.resolve(context.text(words, 405, { allow: allowed.join(', ') }))
  }
}
