/** What the browser keeps for this address; it may be full, or closed to pages. */
export type Store = Pick<Storage, 'getItem' | 'setItem' | 'removeItem' | 'key' | 'length'>

/** @returns false where the browser did not keep it */
export function keep(name: string, value: unknown, store: Store = localStorage): boolean {
  try {
    store.setItem(name, JSON.stringify(value))
    return true
  } catch {
    return false
  }
}

/** What was kept under a name, or undefined where there is nothing that can be read. */
export function kept(name: string, store: Store = localStorage): unknown {
  try {
    const text = store.getItem(name)
    return text === null ? undefined : JSON.parse(text)
  } catch {
    return undefined
  }
}

export function forget(name: string, store: Store = localStorage): void {
  try {
    store.removeItem(name)
  } catch {
    // A store that is closed keeps nothing to forget.
  }
}

/** All names that begin so, in their order. */
export function namesKept(beginning: string, store: Store = localStorage): readonly string[] {
  try {
    const names = Array.from({ length: store.length }, (_, i) => store.key(i) ?? '')
    return names.filter((name) => name.startsWith(beginning)).sort()
  } catch {
    return []
  }
}
