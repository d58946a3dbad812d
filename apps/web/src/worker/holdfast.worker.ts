import { openModel } from '#model'
import { clerk } from './clerk.ts'
import { openCrew, type Second } from './crew.ts'
import type { FromWorker, ToWorker } from './protocol.ts'
import { second } from './second.ts'
import type { ShareAsked } from './shares.ts'

/** Another worker of this very script; where the machine has one core there is nothing to share. */
const start = (): Second | undefined =>
  // The platform's type leaves open what a worker sends and takes.
  navigator.hardwareConcurrency >= 2
    ? (new Worker(self.location.href, { type: 'module' }) as unknown as Second)
    : undefined

/** A message to oneself comes after those that wait; a timer would wait four milliseconds. */
const { port1, port2 } = new MessageChannel()
const pause = (): Promise<void> =>
  new Promise((resolve) => {
    port1.onmessage = () => resolve()
    port2.postMessage(undefined)
  })

const { receive } = clerk(openModel(openCrew(start, pause)), (reply: FromWorker) => self.postMessage(reply))
const runShare = second()

self.onmessage = ({ data }: MessageEvent<ToWorker | ShareAsked>) => {
  if (data.type === 'share') self.postMessage(runShare(data))
  else void receive(data)
}
