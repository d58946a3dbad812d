import { goldenYear } from '@holdfast/ecosystem/testing/golden-year'

self.addEventListener('message', ({ data }: MessageEvent<readonly number[]>) => {
  self.postMessage(goldenYear(data))
})
