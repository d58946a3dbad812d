import { addressOf, placeNames, places } from './address.ts'

/** Something to go to; some have a key. */
export interface Act {
  readonly words: string
  readonly address: string
  readonly key?: string
}

/** What a single letter leads to. */
export const keyedActs = (): readonly Act[] => [
  { words: 'Log something', address: addressOf('record'), key: 'l' },
  ...placeNames.map((place) => ({
    words: `Go to ${places[place].title}`,
    address: addressOf(place),
    key: places[place].key,
  })),
]
