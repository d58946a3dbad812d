import { model } from '#model'
import { clerk } from './clerk.ts'
import type { FromWorker, ToWorker } from './protocol.ts'

const { receive } = clerk(
  model,
  (reply: FromWorker) => self.postMessage(reply),
  (next) => setTimeout(next, 0),
)

self.onmessage = (event: MessageEvent<ToWorker>) => receive(event.data)
