import { media, outside } from '../accounts/index.ts'
import { carry, once, process } from '../declare/index.ts'
import { activatedCarbonOf } from '../processes/activated-carbon.ts'

export const carbonSwap = process<undefined>({
  id: 'carbon removed',
  title: 'Activated carbon taken out',
  says: 'What the carbon holds leaves with it.',
  source: 'mass balance',
  event: true,
  each: (system) => once(activatedCarbonOf(system) !== undefined),
  reads: {},
  parameters: {},
  transfers: [carry({ from: media.carbon, to: outside.spentMedia, atoms: ['N', 'P', 'C'], rate: '1' })],
})
