import { plain } from '../../figure/numbers.ts'
import type { Subject } from './subjects.ts'

/** What was read on a day, each with what its kit may be off by: "4 (3.2 to 4.8) mg/L NO3". */
export const readIn = ({ readings, factor, unit }: Subject, day: number): string =>
  readings
    .filter(({ reading }) => Math.floor(reading.day) === Math.floor(day))
    .map(({ reading, low, high }) => {
      const put = (value: number) => plain(value * factor)
      return reading.belowDetection
        ? `under ${put(reading.value)} ${unit}`
        : `${put(reading.value)} (${put(low)} to ${put(high)}) ${unit}`
    })
    .join(', ')
