import { plain } from '../../figure/numbers.ts'
import { amount } from '../../ways/amounts.ts'
import { isMoved, type Settings, type Today } from '../settings.ts'

/** What levers set otherwise than today: "2 g of feed a day; 60 L of water every 14 days". */
export function settingWords(set: Settings, today: Today): string {
  const { feed_g, water_L, water_days, media_g, media_days } = set
  const water = `${amount('volume', water_L)} of water every ${plain(water_days)} days`
  const media = `${plain(media_g)} g of media every ${plain(media_days)} days`
  const parts = [
    ...(isMoved(set, today, 'feed_g') ? [`${plain(feed_g)} g of feed a day`] : []),
    ...(isMoved(set, today, 'water_L', 'water_days') ? [water_L > 0 ? water : 'no water changes'] : []),
    ...(isMoved(set, today, 'media_g', 'media_days') ? [media_g > 0 ? media : 'no media'] : []),
  ]
  return parts.length > 0 ? parts.join('; ') : 'as today'
}
