import { vi } from 'vitest'
import { chooseWays, type Ways, ways } from './ways.ts'

/** For tests: as a keeper reads who chose these ways; gives back how it was. */
export function readAs(chosen: Partial<Ways>): () => void {
  const before = ways()
  const kept = new Map<string, string>()
  vi.stubGlobal('localStorage', {
    getItem: (name: string) => kept.get(name) ?? null,
    setItem: (name: string, text: string) => void kept.set(name, text),
  })
  chooseWays(chosen)
  return () => {
    chooseWays(before)
    vi.unstubAllGlobals()
  }
}
