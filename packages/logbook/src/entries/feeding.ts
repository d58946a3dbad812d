import { choicesOf } from './blank.ts'
import { asTyped, kind, name, notNegative, typedTexts } from './kind.ts'
import { figure, inWordsOf } from './says.ts'
import { z } from './schema.ts'

/** From this day on so much is fed each day, as fed (frozen: thawed); of one feed, or of all together. */
export const feeding = kind({
  name: 'feeding',
  title: 'Change of feed',
  v: 1,
  body: {
    g_per_day: notNegative,
    /** Kind of the feed as the description has it; without it all feeds together, in the shares they had. */
    feed: z.exactOptional(name),
    text: asTyped,
    typed: typedTexts,
  },
  blanks: ({ system }) => [
    {
      name: 'amount',
      label: 'Fed each day from now on',
      holds: 'mass-per-day',
      required: true,
      hint: 'As fed (frozen: thawed), such as 4 g/d; 0 g/d for none',
    },
    {
      name: 'feed',
      label: 'Which feed',
      holds: 'choice',
      required: false,
      hint: 'One of the feeds described; left out, all feeds together',
      choices: choicesOf((system?.feeds ?? []).map(({ kind }) => kind)),
    },
  ],
  understand: (filled) => ({
    g_per_day: filled.number('amount'),
    ...filled.wordsAs('feed', 'feed'),
    text: filled.typed.amount ?? '',
    typed: filled.typed,
  }),
  fills: ({ g_per_day, feed }) => ({ amount: `${g_per_day} g/d`, ...(feed !== undefined && { feed }) }),
  says: (body) => {
    const { g_per_day, feed } = body
    return inWordsOf(
      body,
      `Fed ${figure(g_per_day)} g/d${feed === undefined ? '' : ` of ${feed}`} from here on`,
    )
  },
  settles: ({ feed = 'all' }) => feed,
})
