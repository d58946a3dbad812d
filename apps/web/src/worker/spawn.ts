import type { Port } from './desk.ts'

/** Starts a worker with the model in it. */
export const spawn = (): Port =>
  // The protocol types what a worker sends and takes; the platform's type leaves that open.
  new Worker(new URL('./holdfast.worker.ts', import.meta.url), { type: 'module' }) as unknown as Port
