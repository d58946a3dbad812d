import { events } from '../src/events/index.ts'
import { processes } from '../src/processes/index.ts'
import { reef } from '../src/testing/systems.ts'
import { processesPage } from './processes-page.ts'

/** The page of the processes there are, with the reef of the tests for an example of each. */
export const presentProcessesPage = (): string =>
  processesPage(
    [
      ['All day', processes],
      ['At an instant', events],
    ],
    reef,
  )
