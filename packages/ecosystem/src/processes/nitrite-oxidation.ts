import { rock, water } from '../accounts/index.ts'
import { nitriteOxidisers } from './nitrifiers.ts'
import { oxidation } from './oxidation.ts'

export const nitriteOxidation = oxidation({
  id: 'nitrite-oxidation',
  title: 'Nitrite oxidation',
  says: 'A second group turns nitrite into nitrate; it grows later and slower, so that nitrite piles up in a young system.',
  groups: nitriteOxidisers,
  from: water.nitrite,
  into: water.nitrate,
  rich: rock.nitriteFast,
  poor: rock.nitriteSlow,
})
