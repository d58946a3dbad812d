/** Every so many days from a date on, up to the last. */
export function dates(from: string, everyDays: number, last: string): readonly string[] {
  const found: string[] = []
  for (let time = Date.parse(from); time <= Date.parse(last); time += everyDays * 86_400_000)
    found.push(new Date(time).toISOString().slice(0, 10))
  return found
}

/** Of these dates the first of each month, where it lies in its first week. */
export const firstOfMonth = (of: readonly string[]): readonly string[] =>
  of.filter((date) => date.slice(8) <= '07')
