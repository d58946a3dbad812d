import { inputsHash } from './inputs-hash.ts'
import {
  type Answer,
  type FromWorker,
  type Question,
  type RunName,
  sameRun,
  stopped,
  type ToWorker,
} from './protocol.ts'

/** The part of a Worker that the desk uses. */
export interface Port {
  postMessage(message: ToWorker): void
  terminate(): void
  onmessage: ((event: { readonly data: FromWorker }) => void) | null
}

export interface Desk {
  /** Asks; what came before and is not answered yet is overtaken. Gives the hash of the inputs. */
  ask(question: Question): string
  cancel(): void
  close(): void
}

interface Sent {
  readonly name: RunName
  readonly question: Question
  /** True once a first answer came. */
  begun: boolean
}

/**
 * The page's end of the worker. What is not of the run last sent is dropped. A run is overtaken once its first
 * answer is there, so that a finger that never rests is answered too; of the questions meanwhile only the latest
 * is sent.
 */
export function openDesk(spawn: () => Port, hear: (reply: FromWorker) => void): Desk {
  let port = listenTo(spawn())
  let sent: Sent | undefined
  let waiting: Sent | undefined
  let seq = 0
  let processes: Answer['processes'] = []

  function listenTo(opened: Port): Port {
    opened.onmessage = (event) => {
      if (opened === port) receive(whole(event.data))
    }
    return opened
  }

  /** The answer with its processes, which are sent once. */
  function whole(reply: FromWorker): FromWorker {
    if (!('answer' in reply)) return reply
    if (reply.sameProcesses) return { ...reply, answer: { ...reply.answer, processes } }
    processes = reply.answer.processes
    return reply
  }

  function receive(reply: FromWorker): void {
    if (!sent || !sameRun(reply, sent.name)) return
    if (reply.type === 'partial') sent.begun = true
    if (reply.type === 'done' || reply.type === 'failed') sent = undefined
    hear(reply)
    sendNext()
  }

  function sendNext(): void {
    if (!waiting || (sent && !sent.begun)) return
    sent = waiting
    waiting = undefined
    port.postMessage({ type: 'ask', ...sent.name, question: sent.question })
  }

  return {
    ask(question) {
      seq += 1
      const name = { run: `run-${seq}`, seq, inputsHash: inputsHash(question) }
      waiting = { name, question, begun: false }
      sendNext()
      return name.inputsHash
    },
    cancel() {
      if (!sent) return
      const { name } = sent
      // A worker deep in its arithmetic would not hear it.
      port.onmessage = null
      port.terminate()
      port = listenTo(spawn())
      sent = undefined
      waiting = undefined
      hear({ type: 'failed', ...name, issue: stopped })
    },
    close() {
      port.onmessage = null
      port.terminate()
    },
  }
}
