/**
 * Where things lie. TypeScript lays the memory out (src/integrate/kernel-memory.ts) and tells the kernel
 * by `place`; nothing is allocated here. A vector is a row of 16 bytes for each number: both members.
 * States that quick processes change or read come first, then the other states inside, then those outside;
 * flows of quick processes come before those of slow ones.
 */

/** Bytes of a vector over the quick states, over the states inside, and over all states. */
export let quick: usize = 0
export let inside: usize = 0
export let all: usize = 0
/** Bytes of a vector over the flows of quick processes, and over all flows. */
export let quickFlows: usize = 0
export let overFlows: usize = 0

/** States at the start of the step, and where processes are to be worked out. */
export let start: usize = 0
export let stage: usize = 0
/** Net rates by slow processes at the start of the step and at the stage. */
export let slopeStart: usize = 0
export let slope: usize = 0
/** Changes by slow processes since the start at two stages in turn. */
export let lastChange: usize = 0
export let changeBefore: usize = 0

/** Net rates by quick processes at the start of the step, at the start of a short step, and at the stage. */
export let quickSlopeBegin: usize = 0
export let quickSlopeStart: usize = 0
export let quickSlope: usize = 0
/** States at the start of a short step, and their changes since at two stages in turn. */
export let quickStart: usize = 0
export let quickLastChange: usize = 0
export let quickChangeBefore: usize = 0
/** Net rates by slow processes that hold while the quick ones are stepped. */
export let forcing: usize = 0

/** Absolute tolerances. */
export let tolerance: usize = 0
/** Directions of the power iteration, of slow and of quick processes; losses of accounts. */
export let direction: usize = 0
export let quickDirection: usize = 0
export let losses: usize = 0

/** Rates of flows at the stage and at the start of the step; whole flows of the step; their sums. */
export let flows: usize = 0
export let flowsStart: usize = 0
export let wholeFlows: usize = 0
export let totals: usize = 0
/** The same of quick processes for a short step. */
export let quickFlowsStart: usize = 0
export let quickWholeFlows: usize = 0
/** For each flow the offsets of the states it leaves and enters, -1 for none. */
export let ends: usize = 0

/** Sums that processes share, those that quick ones add to first; the same at the start of the step and at the stage before. */
export let gathered: usize = 0
export let gatheredStart: usize = 0
export let gatheredBefore: usize = 0
export let quickSums: usize = 0
export let sums: usize = 0
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
  quick = load<usize>(at, 0)
  inside = load<usize>(at, 4)
  all = load<usize>(at, 8)
  quickFlows = load<usize>(at, 12)
  overFlows = load<usize>(at, 16)
  quickSums = load<usize>(at, 20)
  sums = load<usize>(at, 24)
  start = load<usize>(at, 28)
  stage = load<usize>(at, 32)
  slopeStart = load<usize>(at, 36)
  slope = load<usize>(at, 40)
  lastChange = load<usize>(at, 44)
  changeBefore = load<usize>(at, 48)
  quickSlopeBegin = load<usize>(at, 52)
  quickSlopeStart = load<usize>(at, 56)
  quickSlope = load<usize>(at, 60)
  quickStart = load<usize>(at, 64)
  quickLastChange = load<usize>(at, 68)
  quickChangeBefore = load<usize>(at, 72)
  forcing = load<usize>(at, 76)
  tolerance = load<usize>(at, 80)
  direction = load<usize>(at, 84)
  quickDirection = load<usize>(at, 88)
  losses = load<usize>(at, 92)
  flows = load<usize>(at, 96)
  flowsStart = load<usize>(at, 100)
  wholeFlows = load<usize>(at, 104)
  totals = load<usize>(at, 108)
  quickFlowsStart = load<usize>(at, 112)
  quickWholeFlows = load<usize>(at, 116)
  ends = load<usize>(at, 120)
  gathered = load<usize>(at, 124)
  gatheredStart = load<usize>(at, 128)
  gatheredBefore = load<usize>(at, 132)
  coefficients = load<usize>(at, 136)
  answer = load<usize>(at, 140)
  blocks = load<usize>(at, 144)
}
