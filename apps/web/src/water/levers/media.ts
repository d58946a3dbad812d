import { plain } from '../../figure/numbers.ts'
import { type Lever, upTo, volumeOf } from './lever.ts'

export const media: Lever = {
  key: 'media',
  title: 'Phosphate media',
  short: 'Media',
  lacks: ({ media_g }) =>
    media_g === undefined
      ? 'Your letter has no reactor for phosphate media. Describe one there, and its lever stands here.'
      : undefined,
  handles: [
    {
      setting: 'media_g',
      title: 'Media each time',
      measure: 'mass',
      reach: (system, { media_g = 0 }) => ({
        min: 0,
        max: Math.max(upTo(volumeOf(system) / 2, 10), upTo(2 * media_g, 10)),
        step: volumeOf(system) > 200 ? 5 : 1,
      }),
    },
    {
      setting: 'media_days',
      title: 'Days between fillings',
      measure: 'days',
      reach: (_, { media_days = 0 }) => ({ min: 7, max: Math.max(120, media_days), step: 1 }),
    },
  ],
  says: ({ media_g, media_days }) =>
    media_g > 0
      ? `Fresh media go in when the last ones have been in for ${plain(media_days)} days; if they are older, today.`
      : `The media go out when they have been in for ${plain(media_days)} days; if they are older, today.`,
  yearly: ({ media_g, media_days }) => (365 * media_g) / media_days,
  inWords: (yearly) => `${plain(yearly)} g of media`,
}
