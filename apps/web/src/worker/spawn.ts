import { type House, openOffice } from './office.ts'

/** Opens a line to the worker of this page, which has the model in it and is started with the first question. */
export const spawn = openOffice(
  () =>
    // The protocol types what a worker sends and takes; the platform's type leaves that open.
    new Worker(new URL('./holdfast.worker.ts', import.meta.url), { type: 'module' }) as unknown as House,
)
