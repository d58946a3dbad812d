import type { Process } from '../declare/index.ts'
import { algalGrowth } from './algal-growth.ts'
import { algalShedding } from './algal-shedding.ts'
import { ammoniaOxidation } from './ammonia-oxidation.ts'
import { bedDecay } from './bed-decay.ts'
import { bedGrowth } from './bed-growth.ts'
import { carbonateSorption } from './carbonate-sorption.ts'
import { coralUptake } from './coral-uptake.ts'
import { dissolvedOrganics } from './dissolved-organics.ts'
import { feeding } from './feeding.ts'
import { ferricMedia } from './ferric-media.ts'
import { foamFractionation } from './foam-fractionation.ts'
import { grazing } from './grazing.ts'
import { mineralisation } from './mineralisation.ts'
import { nitrifierDecay } from './nitrifier-decay.ts'
import { nitriteOxidation } from './nitrite-oxidation.ts'
import { settling } from './settling.ts'
import { topOff } from './top-off.ts'
import { unexplainedLoss } from './unexplained-loss.ts'

/** Every process there is; a system gets those whose instances it has. */
export const processes: readonly Process[] = [
  feeding,
  settling,
  mineralisation,
  dissolvedOrganics,
  ammoniaOxidation,
  nitriteOxidation,
  nitrifierDecay,
  topOff,
  foamFractionation,
  carbonateSorption,
  ferricMedia,
  algalGrowth,
  algalShedding,
  grazing,
  coralUptake,
  bedGrowth,
  bedDecay,
  unexplainedLoss,
]
