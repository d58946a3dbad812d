/** How a run tells where it is and hears that it should stop. */
export interface Running {
  /** Share of the work done, 0 to 1. */
  readonly onProgress: (share: number) => void
  readonly cancelled: () => boolean
}

export const quietly: Running = { onProgress: () => undefined, cancelled: () => false }

/** An issue as data: a run that was told to stop has no answer. */
export const stopped = {
  code: 'cancelled',
  where: 'This run',
  got: 'was stopped before it was done',
  accepted: '',
  next: 'What you see is from before.',
} as const
