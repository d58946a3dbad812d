import { Convert } from './convert.tsx'
import { SeaWater } from './sea-water.tsx'

/** The sums that come before a figure is written down: units, and sea water. */
export function Sums() {
  return (
    <>
      <SeaWater />
      <Convert />
    </>
  )
}
