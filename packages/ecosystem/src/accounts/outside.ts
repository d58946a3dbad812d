import { account } from '../declare/account.ts'

const NPC = ['N', 'P', 'C'] as const

/** Places outside the system; what they gave is below zero, what they got is above. */
export const outside = {
  feed: account('outside', 'outside.feed', 'Feed', NPC),
  sourceWater: account('outside', 'outside.source-water', 'Source water', ['N', 'P', 'Si']),
  salt: account('outside', 'outside.salt', 'Salt mix', ['N', 'P', 'Si']),
  dose: account('outside', 'outside.dose', 'Doses', NPC),
  rock: account('outside', 'outside.rock', 'Rock placed in the system', NPC),
  minerals: account('outside', 'outside.minerals', 'Minerals of rock, sand and glass', ['Si']),
  air: account('outside', 'outside.air', 'Nitrogen gas and air', ['N']),
  inorganicCarbon: account('outside', 'outside.inorganic-carbon', 'Inorganic carbon and air', ['C']),
  skimmate: account('outside', 'outside.skimmate', 'Skimmate', NPC),
  discardedWater: account('outside', 'outside.discarded-water', 'Discarded water', [...NPC, 'Si']),
  filterWaste: account('outside', 'outside.filter-waste', 'What filters held when they were emptied', NPC),
  siphoned: account('outside', 'outside.siphoned', 'Settled waste siphoned out', NPC),
  refugiumHarvest: account('outside', 'outside.refugium-harvest', 'Algae harvested from the refugium', NPC),
  scrubberHarvest: account(
    'outside',
    'outside.scrubber-harvest',
    'Algae harvested from the turf scrubber',
    NPC,
  ),
  handRemoved: account('outside', 'outside.hand-removed', 'Algae removed by hand', NPC),
  spentMedia: account('outside', 'outside.spent-media', 'Spent media', NPC),
  unexplained: account('outside', 'outside.unexplained', 'Not explained yet', ['N', 'P']),
  animals: account('outside', 'outside.animals', 'Animals bought, lost or given away', NPC),
} as const
