/** A moment as a part of a name that sorts by it and is one on every platform: 2026-02-01T08-00-00, UTC. */
export const inName = (moment: Date): string => moment.toISOString().slice(0, 19).replaceAll(':', '-')
