import { chooseWays, type Ways, ways } from './ways.ts'

/** For tests: as a keeper reads who chose these ways; gives back how it was. */
export function readAs(chosen: Partial<Ways>): () => void {
  const before = ways()
  const store = Object.getOwnPropertyDescriptor(globalThis, 'localStorage')
  const kept = new Map<string, string>()
  const value = {
    getItem: (name: string) => kept.get(name) ?? null,
    setItem: (name: string, text: string) => void kept.set(name, text),
  }
  Object.defineProperty(globalThis, 'localStorage', { value, configurable: true })
  chooseWays(chosen)
  return () => {
    chooseWays(before)
    if (store) Object.defineProperty(globalThis, 'localStorage', store)
    else Reflect.deleteProperty(globalThis, 'localStorage')
  }
}
