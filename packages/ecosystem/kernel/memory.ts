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

/** Net rates by quick processes at the start of a short step and at the stage. */
export let quickSlopeStart: usize = 0
export let quickSlope: usize = 0
/** States at the start of a short step, and what they change by, per day, at its two stages. */
export let quickStart: usize = 0
export let quickFirst: usize = 0
export let quickSecond: usize = 0
/** What is left of the rate of a quick state when what it makes leave has left; γ times the days, by state. */
export let damping: usize = 0
export let implicitDays: usize = 0
/** What of a rate each quick state has let go on. */
export let released: usize = 0
/** Net rates by slow processes that hold while the quick ones are stepped. */
export let forcing: usize = 0

/** Absolute tolerances. */
export let tolerance: usize = 0
/** Direction of the power iteration; losses of accounts. */
export let direction: usize = 0
export let losses: usize = 0

/** Rates of flows at the stage and at the start of the step; whole flows of the step; their sums. */
export let flows: usize = 0
export let flowsStart: usize = 0
export let wholeFlows: usize = 0
export let totals: usize = 0
/** The same of quick processes for a short step. */
export let quickFlowsStart: usize = 0
export let quickWholeFlows: usize = 0
/** What each quick flow carries on of a rate where it begins, in the implicit part of a short step. */
export let quickShares: usize = 0
/**
 * Of each exchange how much faster it runs for each µmol where it begins, and slower for each where it ends, per day:
 * at the stage, at the start of a short step and between; and what it carries on of rates at both ends.
 */
export let overPulls: usize = 0
export let pulls: usize = 0
export let pullsStart: usize = 0
export let pullsBetween: usize = 0
export let exchangeAnswers: usize = 0
/** For each flow the offsets of the states it leaves and enters, -1 for none. */
export let ends: usize = 0
/** Quick flows that go both ways, as offsets: the flow, where it begins and where it ends. */
export let exchanges: usize = 0
/** The other quick flows by where they begin: of accounts without exchanges, where exchanges begin, where they end. */
export let outflows: usize = 0
export let hubOutflows: usize = 0
export let farOutflows: usize = 0

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
  return blocks + index * 40
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
  overPulls = load<usize>(at, 28)
  start = load<usize>(at, 32)
  stage = load<usize>(at, 36)
  slopeStart = load<usize>(at, 40)
  slope = load<usize>(at, 44)
  lastChange = load<usize>(at, 48)
  changeBefore = load<usize>(at, 52)
  quickSlopeStart = load<usize>(at, 56)
  quickSlope = load<usize>(at, 60)
  quickStart = load<usize>(at, 64)
  quickFirst = load<usize>(at, 68)
  quickSecond = load<usize>(at, 72)
  damping = load<usize>(at, 76)
  implicitDays = load<usize>(at, 80)
  released = load<usize>(at, 84)
  forcing = load<usize>(at, 88)
  tolerance = load<usize>(at, 92)
  direction = load<usize>(at, 96)
  losses = load<usize>(at, 100)
  flows = load<usize>(at, 104)
  flowsStart = load<usize>(at, 108)
  wholeFlows = load<usize>(at, 112)
  totals = load<usize>(at, 116)
  quickFlowsStart = load<usize>(at, 120)
  quickWholeFlows = load<usize>(at, 124)
  quickShares = load<usize>(at, 128)
  pulls = load<usize>(at, 132)
  pullsStart = load<usize>(at, 136)
  pullsBetween = load<usize>(at, 140)
  exchangeAnswers = load<usize>(at, 144)
  exchanges = load<usize>(at, 148)
  outflows = load<usize>(at, 152)
  hubOutflows = load<usize>(at, 156)
  farOutflows = load<usize>(at, 160)
  ends = load<usize>(at, 164)
  gathered = load<usize>(at, 168)
  gatheredStart = load<usize>(at, 172)
  gatheredBefore = load<usize>(at, 176)
  coefficients = load<usize>(at, 180)
  answer = load<usize>(at, 184)
  blocks = load<usize>(at, 188)
}
