/**
 * Where things lie. TypeScript lays the memory out (src/integrate/kernel-memory.ts) and tells the kernel
 * by `place`; nothing is allocated here. A vector is a row of 16 bytes for each number: both members.
 */

/** Bytes of a vector over the states inside, and over all states. */
export let inside: usize = 0
export let all: usize = 0

/** States at the start of the step, and where the processes are to be worked out. */
export let start: usize = 0
export let stage: usize = 0
/** Net rates at the start and at the stage. */
export let slopeStart: usize = 0
export let slope: usize = 0
/** Changes since the start at two stages in turn. */
export let lastChange: usize = 0
export let changeBefore: usize = 0
/** Absolute tolerances. */
export let tolerance: usize = 0
/** Of the power iteration; of losses. */
export let direction: usize = 0
export let losses: usize = 0

/** Bytes of a vector over the flows, and these: rates at the stage and at the start, whole flows, their sums. */
export let overFlows: usize = 0
export let flows: usize = 0
export let flowsStart: usize = 0
export let wholeFlows: usize = 0
export let totals: usize = 0
/** For each flow the offsets of the states it leaves and enters, -1 for none. */
export let ends: usize = 0

export let gathered: usize = 0
export let gatheredBytes: usize = 0
/** Coefficients of the stages, by their number (src/integrate/coefficient-table.ts). */
export let coefficients: usize = 0
/** Two numbers that a function hands back, one a member. */
export let answer: usize = 0

let blocks: usize = 0

/** Whether single flows are written: for books, for the limiter, for the losses of accounts. */
export let books: bool = false

export function keepBooks(on: bool): void {
  books = on
}

export function block(index: i32): usize {
  return blocks + index * 36
}

/** Reads the addresses, in the order in which TypeScript lays them out. */
export function place(at: usize): void {
  inside = load<usize>(at, 0)
  all = load<usize>(at, 4)
  overFlows = load<usize>(at, 8)
  gatheredBytes = load<usize>(at, 12)
  start = load<usize>(at, 16)
  stage = load<usize>(at, 20)
  slopeStart = load<usize>(at, 24)
  slope = load<usize>(at, 28)
  lastChange = load<usize>(at, 32)
  changeBefore = load<usize>(at, 36)
  tolerance = load<usize>(at, 40)
  direction = load<usize>(at, 44)
  losses = load<usize>(at, 48)
  flows = load<usize>(at, 52)
  flowsStart = load<usize>(at, 56)
  wholeFlows = load<usize>(at, 60)
  totals = load<usize>(at, 64)
  ends = load<usize>(at, 68)
  gathered = load<usize>(at, 72)
  coefficients = load<usize>(at, 76)
  answer = load<usize>(at, 80)
  blocks = load<usize>(at, 84)
}
