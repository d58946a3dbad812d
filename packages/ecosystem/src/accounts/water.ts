import { account } from '../declare/account.ts'

const NPC = ['N', 'P', 'C'] as const

/** What is dissolved or drifts in the water; vessels joined by flow share it. */
export const water = {
  ammonia: account('inside', 'water.ammonia', 'Ammonia in the water', ['N']),
  nitrite: account('inside', 'water.nitrite', 'Nitrite in the water', ['N']),
  nitrate: account('inside', 'water.nitrate', 'Nitrate in the water', ['N']),
  phosphate: account('inside', 'water.phosphate', 'Phosphate in the water', ['P']),
  silicate: account('inside', 'water.silicate', 'Silicate in the water', ['Si']),
  particles: account('inside', 'water.particles', 'Particles adrift', NPC),
  bacteria: account('inside', 'water.bacteria', 'Bacteria that live on dosed carbon', NPC),
  labile: account('inside', 'water.labile', 'Dissolved organics that decay in days', NPC),
  skimmable: account('inside', 'water.skimmable', 'Dissolved organics that foam can take', NPC),
  resistant: account('inside', 'water.resistant', 'Dissolved organics that foam leaves', NPC),
} as const

/** Everything that leaves with a litre of water. */
export const inTheWater = Object.values(water)
