import { keep, kept, type Store } from '../../shell/browser-store.ts'

/** What this browser remembers of the last entries, to have it at hand for the next. */
export interface Remembered {
  /** Kinds of entries, the last used first. */
  readonly kinds: readonly string[]
  /** Unit of a figure without one, and kit, by the name of what they belong to. */
  readonly words: Readonly<Record<string, string>>
  /** What was chosen of several, the last first, by the name of what it was chosen for. */
  readonly choices: Readonly<Record<string, readonly string[]>>
}

const name = 'holdfast.remembered'

export function remembered(store?: Store): Remembered {
  const found = kept(name, store)
  const of = (key: string): unknown =>
    typeof found === 'object' && found !== null ? Reflect.get(found, key) : undefined
  const [kinds, words, choices] = [of('kinds'), of('words'), of('choices')]
  return {
    kinds: Array.isArray(kinds) ? kinds.filter((kind) => typeof kind === 'string') : [],
    words:
      typeof words === 'object' && words !== null
        ? Object.fromEntries(Object.entries(words).filter(([, word]) => typeof word === 'string'))
        : {},
    choices:
      typeof choices === 'object' && choices !== null
        ? Object.fromEntries(Object.entries(choices).filter(([, one]) => Array.isArray(one)))
        : {},
  }
}

/** Puts a kind and what was chosen first, and the words beside those that were there. */
export function remember(
  kind: string,
  words: Remembered['words'],
  chosen: Readonly<Record<string, string>>,
  store?: Store,
): void {
  const before = remembered(store)
  const first = (one: string, others: readonly string[] = []) => [
    one,
    ...others.filter((each) => each !== one),
  ]
  const choices = Object.entries(chosen).map(
    ([name, one]) => [name, first(one, before.choices[name])] as const,
  )
  keep(
    name,
    {
      kinds: first(kind, before.kinds),
      words: { ...before.words, ...words },
      choices: { ...before.choices, ...Object.fromEntries(choices) },
    } satisfies Remembered,
    store,
  )
}
