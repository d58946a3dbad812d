/** A reading of the water on the model's clock, with the civil date under which it stands. */
interface Read {
  readonly day: number
  readonly date: string
}

/** A reading of nitrite; `value` mg/L as NO2, a limit where nothing was seen. */
interface Nitrite extends Read {
  readonly value: number
  readonly belowDetection: boolean
}

/**
 * Nitrite above which a reading of nitrate is an upper bound, mg/L as NO2. Most colour kits turn nitrate into
 * nitrite and measure that; 1 mg/L of nitrite then reads as some 10 to 100 mg/L of nitrate (from memory),
 * so that 0.1 mg/L is one to a few steps of a chart. Estimate, 0.05 to 0.3.
 */
const muchNitrite_mg_L = 0.1

/**
 * For how many days a reading of nitrite speaks for the days after it, where none is nearer. Estimate, 7 to
 * 21: a peak of nitrite lasts for one to three weeks, and nobody measures on when it has gone.
 */
const speaksForDays = 14

/**
 * Tells of which readings of nitrate nitrite may have been the greater part: by nitrite of the same date,
 * or else by the last one before.
 */
export function underNitritePeak(nitrite: readonly Nitrite[]): (nitrate: Read) => boolean {
  const byDate = new Map<string, boolean>()
  const isMuch = ({ value, belowDetection }: Nitrite): boolean => !belowDetection && value > muchNitrite_mg_L
  for (const one of nitrite) byDate.set(one.date, byDate.get(one.date) === true || isMuch(one))
  const inTime = nitrite.toSorted((a, b) => a.day - b.day)
  return ({ day, date }) => {
    const sameDate = byDate.get(date)
    if (sameDate !== undefined) return sameDate
    const before = lastBefore(inTime, day)
    return before !== undefined && day - before.day <= speaksForDays && isMuch(before)
  }
}

/** The last of a list in the order of time that is before a day, found by halving. */
function lastBefore<One extends Read>(inTime: readonly One[], day: number): One | undefined {
  let [low, high] = [0, inTime.length]
  while (low < high) {
    const middle = (low + high) >> 1
    if (inTime[middle].day < day) low = middle + 1
    else high = middle
  }
  return inTime[low - 1]
}
