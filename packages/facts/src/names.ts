import list from './data/algae.json' with { type: 'json' }

/** Every kind of algae: its key, and what it is called. */
export const algaeNames: readonly { readonly key: string; readonly title: string }[] = list.map(
  ({ key, title }) => ({ key, title }),
)

const titles: ReadonlyMap<string, string> = new Map(algaeNames.map(({ key, title }) => [key, title]))

/**
 * Keys of the catalogue, alone or in a text, as people read them: kinds of algae by what they are called, all
 * else with spaces. A kind whose key is one plain word is known where it stands alone.
 *
 * @example named('hair_green on rock_face') // 'green hair algae on rock face'
 */
export const named = (text: string): string =>
  titles.get(text) ??
  text.replace(/[a-z\d]+(?:_[a-z\d]+)+/g, (key) => titles.get(key) ?? key.replaceAll('_', ' '))
