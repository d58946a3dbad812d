import type { SystemData } from '../shell/system-data.ts'

/** The entries that readings or events came from, each once, in the order of time. */
export const entriesOfAll = (
  those: readonly { readonly entry?: string | undefined }[],
): readonly string[] => [...new Set(those.flatMap(({ entry }) => entry ?? []))]

/** All that the model took from the log up to today: what was read weighs the tanks, what was done drives them. */
export const takenIn = ({
  observations,
  events,
  asOf,
}: Pick<SystemData, 'observations' | 'events' | 'asOf'>): readonly string[] =>
  entriesOfAll([...observations, ...events].filter(({ day }) => day <= asOf).sort((a, b) => a.day - b.day))

/** The entries whose readings weigh the simulated tanks. */
export const weighing = ({
  observations,
  asOf,
}: Pick<SystemData, 'observations' | 'asOf'>): readonly string[] =>
  entriesOfAll(observations.filter((reading) => reading.day <= asOf))
