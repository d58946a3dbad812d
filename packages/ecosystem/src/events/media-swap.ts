import { media, outside } from '../accounts/index.ts'
import { carry, once, process } from '../declare/index.ts'

export const mediaSwap = process<undefined>({
  id: 'media removed',
  title: 'Media taken out',
  says: 'What the media hold leaves with them.',
  source: 'mass balance',
  event: true,
  each: (system) => once(system.equipment.some(({ kind }) => kind === 'ferric media reactor')),
  reads: {},
  parameters: {},
  transfers: [carry({ from: media.ferric, to: outside.spentMedia, atoms: ['P'], rate: '1' })],
})
