import type { Share } from '../share.ts'

/** What the bench calls in the page: ms until some workers have run their shares, the shortest of several times. */
export type Timed = (count: number, days: number, workers: number, times: number) => Promise<number>

const ask = (worker: Worker, share: Share): Promise<void> =>
  new Promise((resolve, reject) => {
    worker.onmessage = () => resolve()
    worker.onerror = ({ message }) => reject(new Error(message))
    worker.postMessage(share)
  })

const timed: Timed = async (count, days, workers, times) => {
  const each = count / workers
  const started = Array.from(
    { length: workers },
    () => new Worker(new URL('./ensemble.worker.ts', import.meta.url), { type: 'module' }),
  )
  const all = (number: number) =>
    Promise.all(started.map((worker, n) => ask(worker, { first: n * each, count: number, days })))
  // Warm, as they are while a lever is dragged.
  await all(2)
  const taken: number[] = []
  for (let time = 0; time < times; time++) {
    const began = performance.now()
    await all(each)
    taken.push(performance.now() - began)
  }
  for (const worker of started) worker.terminate()
  return Math.min(...taken)
}

Object.assign(window, { timed })
