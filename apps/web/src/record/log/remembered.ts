import { keep, kept, type Store } from '../../shell/browser-store.ts'

/** What this browser remembers of the last entries, to have it at hand for the next. */
export interface Remembered {
  /** Kinds of entries, the last used first. */
  readonly kinds: readonly string[]
  /** Unit of a figure without one, and kit, by the name of what they belong to. */
  readonly words: Readonly<Record<string, string>>
}

const name = 'holdfast.remembered'

export function remembered(store?: Store): Remembered {
  const found = kept(name, store)
  const of = (key: string): unknown =>
    typeof found === 'object' && found !== null ? Reflect.get(found, key) : undefined
  const [kinds, words] = [of('kinds'), of('words')]
  return {
    kinds: Array.isArray(kinds) ? kinds.filter((kind) => typeof kind === 'string') : [],
    words:
      typeof words === 'object' && words !== null
        ? Object.fromEntries(Object.entries(words).filter(([, word]) => typeof word === 'string'))
        : {},
  }
}

/** Puts a kind first, and the words beside those that were there. */
export function remember(kind: string, words: Remembered['words'], store?: Store): void {
  const before = remembered(store)
  const kinds = [kind, ...before.kinds.filter((one) => one !== kind)]
  keep(name, { kinds, words: { ...before.words, ...words } } satisfies Remembered, store)
}
