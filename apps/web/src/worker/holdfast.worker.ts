import { openModel } from '#model'
import { type Clerk, clerk } from './clerk.ts'
import { openCrew, type Second } from './crew.ts'
import { withLog } from './log-once.ts'
import type { FromOffice, FromWorker, ToOffice } from './protocol.ts'
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

const model = openModel(openCrew(start, pause))
const runShare = second()
const lines = new Map<number, Clerk>()
const whole = withLog()

function clerkOf(line: number): Clerk {
  const known = lines.get(line)
  if (known) return known
  const made = clerk(model, (reply: FromWorker) => post({ ...reply, line }))
  lines.set(line, made)
  return made
}

const post = (message: FromOffice) => self.postMessage(message)

self.onmessage = ({ data }: MessageEvent<ToOffice | ShareAsked>) => {
  if (data.type === 'share') self.postMessage(runShare(data))
  else if (data.type === 'leave') {
    lines.get(data.line)?.leave()
    lines.delete(data.line)
    if (![...lines.values()].some((line) => line.isAtWork())) model.rest()
    post({ type: 'left', line: data.line })
  } else {
    const { line, question, ...name } = data
    void clerkOf(line).receive({ ...name, question: { ...question, outlook: whole(question.outlook) } })
  }
}
