import { inputsHash } from './inputs-hash.ts'
import { type FromWorker, type Question, type RunName, sameRun, stopped, type ToWorker } from './protocol.ts'

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
}

/** What becomes of a run that is overtaken by a newer question. */
export type Overtaken =
  /** Its worker goes, for the sooner start of the next. */
  | 'break off'
  /** It ends, since its worker knows what the next run needs; of the questions meanwhile only the latest is sent. */
  | 'let end'

/**
 * The page's end of the worker. One run is under way at most; what is not of the run last sent is dropped.
 *
 * @param patience_ms how long a worker may take to hear a cancel before it is ended
 */
export function openDesk(
  spawn: () => Port,
  overtaken: Overtaken,
  hear: (reply: FromWorker) => void,
  patience_ms = 200,
): Desk {
  let port = listenTo(spawn())
  let sent: Sent | undefined
  let waiting: Sent | undefined
  let seq = 0

  function listenTo(opened: Port): Port {
    opened.onmessage = (event) => {
      if (opened === port) receive(event.data)
    }
    return opened
  }

  function receive(reply: FromWorker): void {
    if (!sent || !sameRun(reply, sent.name)) return
    if (reply.type === 'done' || reply.type === 'failed') sent = undefined
    hear(reply)
    if (!sent && waiting) {
      const next = waiting
      waiting = undefined
      send(next)
    }
  }

  function send(next: Sent): void {
    sent = next
    port.postMessage({ type: 'ask', ...next.name, question: next.question })
  }

  function startAnew(): void {
    port.onmessage = null
    port.terminate()
    port = listenTo(spawn())
    sent = undefined
    waiting = undefined
  }

  return {
    ask(question) {
      seq += 1
      const name = { run: `run-${seq}`, seq, inputsHash: inputsHash(question) }
      const next = { name, question }
      if (sent && overtaken === 'let end') waiting = next
      else {
        if (sent) startAnew()
        send(next)
      }
      return name.inputsHash
    },
    cancel() {
      if (!sent) return
      const { name } = sent
      waiting = undefined
      port.postMessage({ type: 'cancel', run: name.run })
      // A worker deep in its arithmetic hears nothing; then it goes, and the page is told all the same.
      setTimeout(() => {
        if (!sent || !sameRun(sent.name, name)) return
        startAnew()
        hear({ type: 'failed', ...name, issue: stopped })
      }, patience_ms)
    },
    close() {
      port.onmessage = null
      port.terminate()
    },
  }
}
