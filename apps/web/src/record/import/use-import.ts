import type { Issue } from '@holdfast/logbook'
import { useEffect, useRef, useState } from 'preact/hooks'
import type { Described } from '../../shell/described.ts'
import type { FromWorker, Preview, Settled, SheetAsked, Stage, ToWorker } from './protocol.ts'

/** What was stored, and where. */
export interface Done {
  readonly preview: Preview
  readonly batch: string
}

interface State {
  readonly sheet?: Pick<SheetAsked, 'number' | 'file' | 'fileName' | 'batch'>
  /** As the keeper has it now; the preview may be of a moment ago. */
  readonly settled?: Settled
  readonly preview?: Preview
  readonly working?: Stage
  /** True once the work took over a second. */
  readonly isLong?: boolean
  /** Why the sheet cannot be read, or the log not be asked. */
  readonly issues?: readonly Issue[]
  readonly isRefused?: boolean
  readonly sending?: { readonly sent: number; readonly of: number; readonly issues?: readonly Issue[] }
  readonly done?: Done
}

export interface Import extends State {
  readonly take: (file: Blob, fileName: string) => void
  readonly settle: (change: Partial<Settled>) => void
  /** Asks once more where the log did not answer. */
  readonly again: () => void
  readonly stop: () => void
  readonly store: () => void
  readonly leave: () => void
}

/** The walk from a sheet to the log. The sheet is read in a worker of its own, which goes with the view. */
export function useImport(described: Described): Import {
  const [state, setState] = useState<State>({})
  const worker = useRef<Worker | undefined>(undefined)
  const count = useRef(0)
  const second = useRef<ReturnType<typeof setTimeout> | undefined>(undefined)

  const end = () => {
    clearTimeout(second.current)
    worker.current?.terminate()
    worker.current = undefined
  }
  useEffect(() => end, [])

  const hear = (reply: FromWorker) => {
    if (reply.type !== 'stage' && reply.type !== 'sent') clearTimeout(second.current)
    setState((before) => afterReply(before, reply))
    if (reply.type === 'stored') end()
  }
  const post = (message: ToWorker) => {
    if (worker.current === undefined) {
      const spawned = new Worker(new URL('./import.worker.ts', import.meta.url), { type: 'module' })
      spawned.onmessage = (event: MessageEvent<FromWorker>) => spawned === worker.current && hear(event.data)
      spawned.onerror = () => spawned === worker.current && hear({ type: 'failed', issues: [workerGone] })
      worker.current = spawned
    }
    worker.current.postMessage(message)
  }
  const ask = (next: State) => {
    const { sheet, settled } = next
    if (sheet === undefined) return
    // A worker deep in an older question would answer that first.
    if (state.working !== undefined) end()
    setState({ ...next, working: 'reading', isLong: false, issues: [] })
    clearTimeout(second.current)
    second.current = setTimeout(() => setState((before) => ({ ...before, isLong: true })), 1000)
    const asked: SheetAsked = {
      ...sheet,
      ...(settled !== undefined && { settled }),
      server: new URL('.', location.href).href.replace(/\/$/, ''),
      workspace: described.workspace,
      system: described.system.id,
      timeZone: described.system.timeZone,
    }
    post({ type: 'read', asked })
  }
  const store = () => {
    if (state.preview === undefined) return
    const { sent = 0, of = 0 } = state.sending ?? {}
    setState({ ...state, sending: { sent, of } })
    post({ type: 'store' })
  }

  const isSending = state.sending !== undefined
  const isStuck = state.sending?.issues !== undefined
  useEffect(() => {
    if (!isStuck) return
    addEventListener('online', store)
    return () => removeEventListener('online', store)
  }, [isStuck])
  useEffect(() => {
    if (!isSending) return
    const ask = (event: BeforeUnloadEvent) => event.preventDefault()
    addEventListener('beforeunload', ask)
    return () => removeEventListener('beforeunload', ask)
  }, [isSending])

  return {
    ...state,
    take(file, fileName) {
      end()
      count.current += 1
      const batch = newBatch(new Date(), described.system.timeZone)
      ask({ sheet: { number: count.current, file, fileName, batch } })
    },
    settle(change) {
      if (state.settled !== undefined) ask({ ...state, settled: { ...state.settled, ...change } })
    },
    again: () => ask(state),
    stop() {
      end()
      const { working: _working, isLong: _long, ...rest } = state
      setState(state.preview === undefined ? {} : { ...rest, issues: [stopped] })
    },
    store,
    leave() {
      end()
      setState({})
    },
  }
}

/** What a reply of the worker makes of what is shown. */
function afterReply(before: State, reply: FromWorker): State {
  const { working: _working, isLong: _long, sending, ...rest } = before
  switch (reply.type) {
    case 'stage':
      return { ...before, working: reply.stage }
    case 'read': {
      // That answers came from an import before stays worth knowing when one of them is changed.
      const isRemembered = reply.preview.isRemembered || rest.preview?.isRemembered === true
      const preview = { ...reply.preview, isRemembered }
      return { ...rest, issues: [], preview, settled: preview.settled }
    }
    case 'refused':
      return { issues: reply.issues, isRefused: true }
    case 'failed':
      return sending === undefined
        ? { ...rest, issues: reply.issues }
        : { ...rest, sending: { ...sending, issues: reply.issues } }
    case 'sent':
      return { ...before, sending: { sent: reply.sent, of: reply.of } }
    case 'unsent':
      return { ...rest, sending: { sent: reply.sent, of: reply.of, issues: reply.issues } }
    case 'stored': {
      const { preview, sheet } = rest
      return preview && sheet ? { done: { preview, batch: sheet.batch } } : {}
    }
  }
}

/** Named by its day, as the terminal names one, and by what tells two of a day apart. */
function newBatch(now: Date, timeZone: string): string {
  const day = new Intl.DateTimeFormat('en-CA', { dateStyle: 'short', timeZone }).format(now)
  const mark = [...crypto.getRandomValues(new Uint8Array(3))]
    .map((byte) => byte.toString(16).padStart(2, '0'))
    .join('')
  return `import-${day}-${mark}`
}

const stopped: Issue = {
  code: 'cancelled',
  where: 'Reading the sheet',
  got: 'it was stopped before it was done',
  accepted: '',
  next: 'What you see is from before.',
}

const workerGone: Issue = {
  code: 'worker-gone',
  where: 'This sheet',
  got: 'this browser could not read it to its end',
  accepted: '',
  next: 'Save the part with the readings as a file of its own, or reload the page. Nothing is stored.',
}
