import { keep, kept } from '../../shell/browser-store.ts'

/** A system that was put away: its log stays, and taking back the retractions brings it back. */
export interface PutAway {
  readonly workspace: string
  readonly id: string
  readonly name: string
  readonly timeZone: string
  readonly retractions: readonly string[]
}

const name = 'holdfast.put-away'

export const putAway = (): readonly PutAway[] => {
  const found = kept(name)
  return Array.isArray(found) ? (found as readonly PutAway[]) : []
}

export const remember = (one: PutAway): boolean =>
  keep(name, [one, ...putAway().filter(({ id }) => id !== one.id)])

export const forgetPutAway = (id: string): boolean =>
  keep(
    name,
    putAway().filter((one) => one.id !== id),
  )
