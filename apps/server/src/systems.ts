import type { Logbook } from '@holdfast/logbook'
import { systemLog } from '@holdfast/logbook'
import { Hono } from 'hono'
import { entryText } from './entry-text.ts'

/** The systems of a logbook, for the page. */
export function systems(logbook: Logbook, kept: string): Hono {
  const routes = new Hono()

  routes.get('/', async (context) => {
    const ids = await logbook.systems()
    const names = await Promise.all(
      ids.map(async (id) => {
        const log = systemLog(await logbook.read({ system: id }))
        return log === undefined ? [] : [{ id, name: log.system.name }]
      }),
    )
    return context.json(names.flat())
  })

  routes.get('/:id', async (context) => {
    const id = context.req.param('id')
    const log = systemLog(await logbook.read({ system: id }))
    if (log === undefined)
      return context.text(
        `System: "${id.slice(0, 100)}" is not in this log. Choose one of api/systems.\n`,
        404,
      )
    const { system, observations, events, from, asOf, remarks } = log
    const entries = log.entries.map((entry) => ({ id: entry.id, at: entry.at, text: entryText(entry) }))
    return context.json({ system, observations, events, from, asOf, kept, entries, remarks })
  })

  return routes
}
