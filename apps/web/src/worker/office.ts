import type { Port } from './desk.ts'
import { withoutLog } from './log-once.ts'
import type { FromOffice, ToOffice, ToWorker } from './protocol.ts'

/** The part of the real worker that the office uses. */
export interface House {
  postMessage(message: ToOffice): void
  terminate(): void
  onmessage: ((event: { readonly data: FromOffice }) => void) | null
}

/** A worker deep in its arithmetic hears nothing; one that does not answer for so long is ended, ms. */
const patience_ms = 500

/** A line that is in use. */
interface Line {
  readonly port: Port
  /** What is not answered yet, to be asked again where the worker had to be ended. */
  asked?: ToWorker | undefined
}

/**
 * One worker for all views of a page, each with a line of its own: a past that one of them asked for is known to
 * all, and stays known while the page is open.
 *
 * @param spawn  starts the worker
 * @returns opens a line; to end it stops what was asked on it, and nothing else
 */
export function openOffice(spawn: () => House): () => Port {
  const lines = new Map<number, Line>()
  let count = 0
  let house: House | undefined
  let lean = withoutLog()
  let leaving = new Map<number, ReturnType<typeof setTimeout>>()

  function opened(): House {
    if (house) return house
    const started = spawn()
    started.onmessage = ({ data }) => {
      if (data.type === 'left') {
        clearTimeout(leaving.get(data.line))
        leaving.delete(data.line)
        return
      }
      const line = lines.get(data.line)
      if (!line) return
      if (data.type === 'done' || data.type === 'failed') {
        if (line.asked?.seq === data.seq) line.asked = undefined
      }
      line.port.onmessage?.({ data })
    }
    lean = withoutLog()
    house = started
    return started
  }

  function post(line: number, message: ToWorker): void {
    const to = opened()
    to.postMessage({
      ...message,
      line,
      question: { ...message.question, outlook: lean(message.question.outlook) },
    })
  }

  function leave(line: number): void {
    const isIdle = lines.get(line)?.asked === undefined
    lines.delete(line)
    if (!house || isIdle) return
    house.postMessage({ type: 'leave', line })
    leaving.set(line, setTimeout(startAnew, patience_ms))
  }

  function startAnew(): void {
    for (const timer of leaving.values()) clearTimeout(timer)
    leaving = new Map()
    if (house) house.onmessage = null
    house?.terminate()
    house = undefined
    for (const [number, { asked }] of lines) if (asked) post(number, asked)
  }

  return () => {
    count += 1
    const number = count
    const port: Port = {
      postMessage: (message) => {
        line.asked = message
        post(number, message)
      },
      terminate: () => leave(number),
      onmessage: null,
    }
    const line: Line = { port }
    lines.set(number, line)
    return port
  }
}
