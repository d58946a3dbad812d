import { account } from '../declare/account.ts'

const NPC = ['N', 'P', 'C'] as const

/** Places outside the system; what they gave is below zero, what they got is above. */
export const outside = {
  feed: account('outside', 'outside.feed', 'Feed', NPC),
  sourceWater: account('outside', 'outside.source-water', 'Source water', ['N', 'P']),
  salt: account('outside', 'outside.salt', 'Salt mix', ['N', 'P']),
  dose: account('outside', 'outside.dose', 'Doses', ['N', 'P']),
  inorganicCarbon: account('outside', 'outside.inorganic-carbon', 'Inorganic carbon and air', ['C']),
  skimmate: account('outside', 'outside.skimmate', 'Skimmate', NPC),
  discardedWater: account('outside', 'outside.discarded-water', 'Discarded water', NPC),
  handRemoved: account('outside', 'outside.hand-removed', 'Algae removed by hand', NPC),
  spentMedia: account('outside', 'outside.spent-media', 'Spent media', ['P']),
  unexplained: account('outside', 'outside.unexplained', 'Not explained yet', ['N', 'P']),
  animals: account('outside', 'outside.animals', 'Animals bought, lost or given away', NPC),
} as const
