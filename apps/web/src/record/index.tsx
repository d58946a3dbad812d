import '../style/record.css'
import { Convert } from './convert.tsx'
import { SeaWater } from './sea-water.tsx'

/** What is written down beside the tank: for now the sums that come before a figure is written. */
export function RecordPlace() {
  return (
    <>
      <Convert />
      <SeaWater />
    </>
  )
}
