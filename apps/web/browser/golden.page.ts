/** A page that works a year out in workers, each a share of the members, and sends home what came of it. */
const shares: readonly (readonly number[])[] = JSON.parse(
  new URLSearchParams(location.search).get('shares') ?? '[]',
)

const inWorker = (members: readonly number[]): Promise<readonly number[]> =>
  new Promise((resolve, reject) => {
    const worker = new Worker('/worker.js', { type: 'module' })
    worker.addEventListener('message', ({ data }) => resolve(data))
    worker.addEventListener('error', ({ message }) => reject(new Error(message)))
    worker.postMessage(members)
  })

const home = (years: readonly number[] | string): Promise<Response> =>
  fetch('/years', { method: 'POST', body: JSON.stringify(years) })

Promise.all(shares.map(inWorker)).then(
  (years) => home(years.flat()),
  (error) => home(String(error)),
)
