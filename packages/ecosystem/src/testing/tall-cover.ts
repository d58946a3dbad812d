import { algaeKind } from '@holdfast/facts'
import { type Patch, standAccount, standCover } from '../accounts/index.ts'
import { stateIndex } from '../assemble/model.ts'
import { growthForm, patchShare } from '../processes/stands.ts'
import type { Run } from './run.ts'

/** Patches that the lamp sees; hidden ones get a fifth of its light. */
const lit: readonly Patch[] = ['open', 'half_hidden']

/** Share of the lit part of a surface under algae taller than a height in mm, at the end of a run. */
export function tallCover({ model, parameters, end }: Run, surface: string, over_mm: number): number {
  const { system, facts } = model
  const ground = system.surfaces.find(({ id }) => id === surface)
  if (!ground) return Number.NaN
  const typical = (fact: string): number => parameters[model.parameters.findIndex((one) => one.fact === fact)]
  const shareOf = (patch: Patch): number => patchShare(ground, patch, facts)
  const kinds = [...new Set(system.algae.map(({ kind }) => kind))].filter(
    (kind) => growthForm(kind) === 'tufted',
  )
  const covered = kinds
    .flatMap((kind) => lit.map((patch) => ({ surface, kind, patch })))
    .reduce((sum, stand) => {
      const { kind, patch } = stand
      const cover = end[stateIndex(model, standCover(stand).id)]
      const dry = end[stateIndex(model, `${standAccount(stand).id}/C`)] / typical(`algae.${kind}.tissue_C`)
      const full = typical(`algae.${kind}.full_cover_mass`) * cover * shareOf(patch) * ground.area_m2
      const height = full > 0 ? (algaeKind(kind).canopyHeight * dry) / full : 0
      return height > over_mm ? sum + cover * shareOf(patch) : sum
    }, 0)
  return covered / lit.reduce((sum, patch) => sum + shareOf(patch), 0)
}
