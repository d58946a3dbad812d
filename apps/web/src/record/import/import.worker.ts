import { holdfastClient } from '@holdfast/client'
import type { ToWorker } from './protocol.ts'
import { SheetClerk } from './sheet-clerk.ts'

const clerk = new SheetClerk(
  (reply) => self.postMessage(reply),
  (server) => holdfastClient(server),
)

self.onmessage = (event: MessageEvent<ToWorker>) => void clerk.receive(event.data)
