import type { MiddlewareHandler } from 'hono'

/**
 * What a page of ours may load and do: only what this server gives. `wasm-unsafe-eval` lets compiled
 * modules run and nothing else.
 */
export const contentPolicy = [
  "default-src 'none'",
  "script-src 'self' 'wasm-unsafe-eval'",
  "style-src 'self'",
  "img-src 'self' blob: data:",
  "font-src 'self'",
  "connect-src 'self'",
  "worker-src 'self'",
  "manifest-src 'self'",
  "base-uri 'none'",
  "form-action 'self'",
  "frame-ancestors 'none'",
].join('; ')

const headers: Readonly<Record<string, string>> = {
  'content-security-policy': contentPolicy,
  'x-content-type-options': 'nosniff',
  'referrer-policy': 'no-referrer',
  'cross-origin-opener-policy': 'same-origin',
  'cross-origin-resource-policy': 'same-origin',
  'permissions-policy': 'camera=(), geolocation=(), microphone=()',
  'x-frame-options': 'DENY',
}

/** Puts the headers on every answer, refusals and failures among them. */
export const withHeaders: MiddlewareHandler = async (context, next) => {
  await next()
  for (const [name, value] of Object.entries(headers)) context.res.headers.set(name, value)
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
  return next()
}

/** Nothing can be changed over the network yet. */
export const readingOnly: MiddlewareHandler = async (context, next) => {
  const { method } = context.req
  if (method === 'GET' || method === 'HEAD') return next()
  return context.text(
    `${method}: this Holdfast only answers GET so far. Write with the command line.\n`,
    405,
    { allow: 'GET, HEAD' },
  )
}
