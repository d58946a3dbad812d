import { homeOf, judged } from '@holdfast/crew-plan'
import { passes } from '@holdfast/ecosystem'
import type { Standing } from './standing.ts'

/** Preference from which on an animal is taken to eat a kind. */
const eats = 0.3
/** So many are named where the catalogue is searched. */
const named = 4

export interface Fitting {
  readonly animals: readonly { readonly taxon: string; readonly tradeName: string }[]
  /** Why none is left. */
  readonly because?: string
}

/**
 * Of some animals, or else of all that eat the kind and pass into its enclosed place, those that may live here: by
 * room, warmth, tank mates and what the keeper accepts.
 */
export function fitting(standing: Standing, kind: string | undefined, meant?: readonly string[]): Fitting {
  const { system, facts, question, growths } = standing
  const withCaution = question.withCaution
  const { candidates, barred } = judged(
    system,
    homeOf(system),
    withCaution === undefined ? {} : { withCaution },
    facts,
  )
  const place = growths.find((one) => one.kind === kind && one.unreached)?.surface
  const wanted = (meant?.map(facts.grazer) ?? facts.grazers()).filter(
    (animal) =>
      animal !== undefined &&
      (meant !== undefined || kind === undefined || facts.taste(animal.taxon, kind).preference >= eats) &&
      (place === undefined || passes(place, animal.adultSize_cm)),
  )
  const animals = wanted
    .flatMap((animal) => {
      const fits = candidates.find((one) => one.animal === animal)
      return fits ? [{ taxon: fits.animal.taxon, tradeName: fits.animal.tradeName }] : []
    })
    .slice(0, meant?.length ?? named)
  if (animals.length > 0) return { animals }
  const why = wanted.flatMap((animal) => barred.find(({ taxon }) => taxon === animal?.taxon) ?? [])
  return {
    animals: [],
    because:
      why.length > 0
        ? `None that eats it may come. ${why
            .slice(0, 3)
            .map(
              ({ taxon, why: words }) => `${begun(facts.grazer(taxon)?.tradeName ?? taxon)}: ${ended(words)}`,
            )
            .join(' ')}`
        : 'No animal of the trade that eats it gets there.',
  }
}

const begun = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1)
const ended = (text: string): string => (/[.?!]$/.test(text) ? text : `${text}.`)
