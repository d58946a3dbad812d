import { plain } from '../../figure/numbers.ts'
import { type Lever, upTo } from './lever.ts'

/** Half a per cent to a few per cent of today's ration, in a number that can be weighed. */
const stepOf = (ration_g: number) => (ration_g >= 10 ? 0.5 : ration_g >= 1 ? 0.1 : 0.01)

export const feed: Lever = {
  key: 'feed',
  title: 'Feed',
  short: 'Feed',
  lacks: ({ feed_g = 0 }) =>
    feed_g > 0 ? undefined : 'Nothing is fed by your letter, so there is no ration to move.',
  handles: [
    {
      setting: 'feed_g',
      title: 'Feed a day',
      measure: 'mass',
      reach: (_, { feed_g = 0 }) => {
        const step = stepOf(feed_g)
        return { min: 0, max: upTo(3 * feed_g, step), step }
      },
    },
  ],
  says: ({ feed_g }) => `That is ${plain(7 * feed_g)} g a week, shared among your feeds as it is now.`,
  yearly: ({ feed_g }) => 365 * feed_g,
  inWords: (yearly) => `${plain(yearly)} g of feed`,
}
