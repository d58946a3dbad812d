import { named } from '@holdfast/facts/names'
import { issueInWords, JournalSearch, type Logbook, Refused, SystemLogs } from '@holdfast/logbook'
import { Hono } from 'hono'
import { etag } from 'hono/etag'
import { declaredOf, mounted } from './api/mount.ts'
import { failed, nothingAt } from './api/refusals.ts'
import { routes } from './api/routes.ts'
import { declaredMethods, ownPagesOnly, withHeaders } from './guard.ts'
import { webFiles } from './web-files.ts'

export interface AppOptions {
  readonly logbook: Logbook
  /** Where the log lives, in words that follow "Your log is kept". */
  readonly kept: string
  /** Folder of the built web app. */
  readonly webFolder: string
  /** Names this start of the program, so that another start can tell that it is still running. */
  readonly start: string
  /** Where failures are written for whoever mends them; never shown to the page. */
  readonly tell: (failure: unknown) => void
}

/** The server as a function of the request: `app.request('/api/systems')` answers without a network. */
export function app({ logbook, kept, webFolder, start, tell }: AppOptions): Hono {
  const server = new Hono()
  server.use(withHeaders)
  server.use(ownPagesOnly)
  server.use(declaredMethods(declaredOf(routes)))
  server.use('/api/*', async (context, next) => {
    await next()
    if (!context.res.headers.has('cache-control')) context.res.headers.set('cache-control', 'no-store')
  })
  // The log of years is the one answer that is worth keeping: asked again, it goes out only where it has changed.
  server.get('/api/systems/:system', etag(), async (context, next) => {
    await next()
    context.res.headers.set('cache-control', 'private, no-cache')
  })
  const [search, logs] = [new JournalSearch(logbook, named), new SystemLogs(logbook)]
  server.route('/', mounted(routes, { logbook, search, logs, kept, start }))
  server.all('/api/*', (context) => context.json({ issues: [nothingAt(context.req.path)] }, 404))
  server.get('*', webFiles(webFolder))
  server.onError((error, context) => {
    tell(error)
    // A refusal of the store is in the keeper's words; anything else is for whoever mends the program.
    const issues = error instanceof Refused ? error.issues : [failed]
    if (context.req.path.startsWith('/api/')) return context.json({ issues }, 500)
    return context.text(`${issues.map(issueInWords).join('\n')}\n`, 500)
  })
  return server
}
