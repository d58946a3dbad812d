/** Cases have dates and no hours: which of a reading and a water change of one day came first. */
import { waterVolume } from './answers/answer.ts'
import { usualValue } from './answers/readings.ts'
import type { CaseFile, CaseReading } from './case-file.ts'
import { eventsOf } from './husbandry.ts'

/**
 * A reading comes before what is done that day, unless its note says "after", or it lies as low under the
 * reading before as the change explains.
 */
export function isAfterItsEvent(file: CaseFile, reading: CaseReading): boolean {
  const changes = eventsOf(file, 'water change').filter(({ date }) => date === reading.date)
  const media = eventsOf(file, 'media placed').filter(({ date }) => date === reading.date)
  if (changes.length + media.length === 0) return false
  const note = (reading.note ?? '').toLowerCase()
  if (/\bafter\b/.test(note)) return true
  if (/\bbefore\b/.test(note)) return false
  const before = file.log.readings
    .filter(({ quantity, date }) => quantity === reading.quantity && date < reading.date)
    .sort((a, b) => (a.date < b.date ? -1 : 1))
    .at(-1)
  if (before === undefined || changes.length === 0) return false
  const taken_L = changes.reduce((sum, event) => sum + Number(event.volume_L), 0)
  const expectedDrop = (taken_L / waterVolume(file)) * usualValue(before)
  return usualValue(before) - usualValue(reading) > expectedDrop / 2
}
