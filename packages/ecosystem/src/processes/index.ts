import type { Process } from '../declare/index.ts'
import { activatedCarbon } from './activated-carbon.ts'
import { algalShedding } from './algal-shedding.ts'
import { algalUptake } from './algal-uptake.ts'
import { ammoniaEvasion } from './ammonia-evasion.ts'
import { ammoniaOxidation } from './ammonia-oxidation.ts'
import { bacterialFoam } from './bacterial-foam.ts'
import { bacterialGrowth } from './bacterial-growth.ts'
import { bacterialLoss } from './bacterial-loss.ts'
import { bedDecay } from './bed-decay.ts'
import { bedGrowth } from './bed-growth.ts'
import { calcification } from './calcification.ts'
import { carbonDosing } from './carbon-dosing.ts'
import { carbonateSorption } from './carbonate-sorption.ts'
import { continuousWaterChange } from './continuous-water-change.ts'
import { coralUptake } from './coral-uptake.ts'
import { crewTurnover } from './crew-turnover.ts'
import { denitrification } from './denitrification.ts'
import { denitrifyingReactor } from './denitrifying-reactor.ts'
import { detritusFeeding } from './detritus-feeding.ts'
import { dissolvedOrganics } from './dissolved-organics.ts'
import { feeding } from './feeding.ts'
import { ferricMedia } from './ferric-media.ts'
import { filterRot } from './filter-rot.ts'
import { fineFiltration } from './fine-filtration.ts'
import { foamFractionation } from './foam-fractionation.ts'
import { grazing } from './grazing.ts'
import { leaching } from './leaching.ts'
import { mechanicalFiltration } from './mechanical-filtration.ts'
import { mineralisation } from './mineralisation.ts'
import { nitrifierDecay } from './nitrifier-decay.ts'
import { nitriteOxidation } from './nitrite-oxidation.ts'
import { nitrogenFixation } from './nitrogen-fixation.ts'
import { overgrowth, standingOver } from './overgrowth.ts'
import { phosphateBinding } from './phosphate-binding.ts'
import { predation } from './predation.ts'
import { rockNitrogenLoss } from './rock-nitrogen-loss.ts'
import { settling } from './settling.ts'
import { silicate } from './silicate.ts'
import { topOff } from './top-off.ts'
import { ultraviolet } from './ultraviolet.ts'
import { unexplainedLoss } from './unexplained-loss.ts'
import { crustGrowth, diatomGrowth, filmGrowth, tuftedGrowth } from './ways-of-growing.ts'

/** Every process there is; a system gets those whose instances it has. */
export const processes: readonly Process[] = [
  feeding,
  settling,
  mineralisation,
  dissolvedOrganics,
  ammoniaOxidation,
  nitriteOxidation,
  nitrifierDecay,
  ammoniaEvasion,
  rockNitrogenLoss,
  denitrification,
  denitrifyingReactor,
  leaching,
  silicate,
  topOff,
  continuousWaterChange,
  foamFractionation,
  mechanicalFiltration,
  filterRot,
  activatedCarbon,
  carbonDosing,
  bacterialGrowth,
  bacterialLoss,
  bacterialFoam,
  ultraviolet,
  carbonateSorption,
  ferricMedia,
  phosphateBinding,
  fineFiltration,
  tuftedGrowth,
  filmGrowth,
  diatomGrowth,
  crustGrowth,
  algalUptake,
  standingOver,
  overgrowth,
  nitrogenFixation,
  algalShedding,
  grazing,
  detritusFeeding,
  crewTurnover,
  predation,
  coralUptake,
  calcification,
  bedGrowth,
  bedDecay,
  unexplainedLoss,
]
