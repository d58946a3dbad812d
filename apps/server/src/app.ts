import { issueInWords, type Logbook, Refused } from '@holdfast/logbook'
import { Hono } from 'hono'
import { ownPagesOnly, readingOnly, withHeaders } from './guard.ts'
import { systems } from './systems.ts'
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
  server.use(readingOnly)
  server.use('/api/*', async (context, next) => {
    await next()
    context.res.headers.set('cache-control', 'no-store')
  })
  server.get('/api/health', (context) => context.json({ program: 'holdfast', status: 'ok', start }))
  server.route('/api/systems', systems(logbook, kept))
  server.all('/api/*', (context) =>
    context.text(`There is nothing at ${context.req.path.slice(0, 200)}.\n`, 404),
  )
  server.get('*', webFiles(webFolder))
  server.onError((error, context) => {
    tell(error)
    // A refusal of the store is in the keeper's words; anything else is for whoever mends the program.
    const words = error instanceof Refused ? error.issues.map(issueInWords).join('\n') : undefined
    return context.text(
      `${words ?? 'Something failed in Holdfast. The window in which it was started says what.'}\n`,
      500,
    )
  })
  return server
}
