import { benchmarkRun } from '../benchmark-system.ts'
import { runShare, type Share } from '../share.ts'

/** As the worker of the page: it keeps the assembled model, and runs the members it is told. */
const run = benchmarkRun(90)

self.addEventListener('message', ({ data }: MessageEvent<Share>) => {
  runShare(run, data)
  self.postMessage('done')
})
