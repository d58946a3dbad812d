import { rock, water } from '../accounts/index.ts'
import { ammoniaOxidisers } from './nitrifiers.ts'
import { oxidation } from './oxidation.ts'

export const ammoniaOxidation = oxidation({
  id: 'ammonia-oxidation',
  title: 'Ammonia oxidation',
  says: 'Oxidisers on rock and sand turn ammonia into nitrite and grow on it; their slow start makes the first peak of a cycle.',
  groups: ammoniaOxidisers,
  from: water.ammonia,
  into: water.nitrite,
  rich: rock.oxidisersFast,
  poor: rock.oxidisersSlow,
})
