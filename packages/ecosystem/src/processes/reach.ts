import type { FactsOfSystem } from '@holdfast/facts'
import { patches } from '../accounts/index.ts'
import type { Surface, System } from '../system.ts'
import { patchShare } from './stands.ts'

/** Does the animal get into a surface behind a comb: half of its size passes the slot. */
export function passes(surface: Surface, adultSize_cm: number): boolean {
  if (!surface.enclosed) return true
  return surface.opening_mm !== undefined && (adultSize_cm * 10) / 2 <= surface.opening_mm
}

/** Is any of a taxon at home where a surface is: it lives in that vessel, or nobody told in which. */
export const livesAt = (
  { animals }: Pick<System, 'animals'>,
  taxon: string,
  { vessel }: Pick<Surface, 'vessel'>,
): boolean => {
  const entries = animals.filter((one) => one.taxon === taxon)
  return entries.length === 0 || entries.some((one) => one.vessel === undefined || one.vessel === vessel)
}

/**
 * Patches in the order open, half hidden, hidden: one is reached when the share of the surface that
 * the animal gets to is at least the share up to the middle of that patch.
 */
export function reaches(
  surface: Surface,
  taxon: string,
  patch: (typeof patches)[number],
  size_cm: number | undefined,
  facts: FactsOfSystem,
): boolean {
  const animal = facts.grazer(taxon)
  if (!animal || !passes(surface, size_cm ?? animal.adultSize_cm)) return false
  let upTo = 0
  for (const each of patches) {
    const share = patchShare(surface, each, facts)
    if (each === patch) return animal.reach[surface.kind] >= upTo + share / 2
    upTo += share
  }
  return false
}
