import { middle } from '@holdfast/crew-plan'
import {
  crewOf,
  type Equipment,
  hungerOf,
  livingOf,
  type System,
  stateIndex,
  unIonisedAmmonia_mg_N_L,
} from '@holdfast/ecosystem'
import type { FactsOfSystem } from '@holdfast/facts'
import { convert } from '@holdfast/quantities'
import { pH, unIonisedAmmoniaFraction } from '@holdfast/seawater'
import { type Books, booksOf, monthsAhead } from './books.ts'
import { equipmentToday } from './equipment-today.ts'
import { type Growth, growthsOf } from './growths-today.ts'
import { type Meant, meantBy } from './meant.ts'
import { mediumLeft } from './medium-left.ts'
import type { LadderQuestion } from './question.ts'
import { type Level, levelOf, type Nutrient, readingsOf } from './water-today.ts'

/** All that causes and refusals are read from. */
export interface Standing {
  readonly question: LadderQuestion
  readonly system: System
  readonly facts: FactsOfSystem
  readonly day: number
  readonly equipment: readonly Equipment[]
  readonly levels: Readonly<Record<Nutrient, Level>>
  readonly books: Readonly<Record<Nutrient, Books>>
  readonly growths: readonly Growth[]
  readonly meant?: Meant
  readonly hasAnimals: boolean
  /** Poisonous part of the ammonia, mg N/L. */
  readonly poison: number
  /** Ammonia or nitrite was read in the last test of it. */
  readonly cycleOpen: boolean
  /** Share of the uptake of fresh media that is left, and what they hold; undefined where none are in place. */
  readonly medium?: { readonly left: number; readonly days: number; readonly held_mg: number }
  /** Grazers that will have used up half of their reserve in two months. */
  readonly hungry: readonly string[]
}

/** pH of a system that does not tell it; on the high side, where more of the ammonia is poisonous. */
const usualPH = 8.3
/** Reserve used up from which animals are lost to hunger, as in the model. */
const starving = 0.5

/** The kind of equipment where the system has one. */
export function pieceOf<K extends Equipment['kind']>(
  { equipment }: Pick<Standing, 'equipment'>,
  kind: K,
): Extract<Equipment, { readonly kind: K }> | undefined {
  return equipment.find((item): item is Extract<Equipment, { readonly kind: K }> => item.kind === kind)
}

/** Reads the system as it stands off description, log, ensemble and books. */
export function standingOf(question: LadderQuestion): Standing {
  const { present, system, observations, events } = question
  const { day, model } = present
  const { facts } = model
  const equipment = equipmentToday(system, events, day)
  const { ledgers, ends } = monthsAhead(present)
  const growths = growthsOf(system, observations, day, facts)
  const meant = meantBy(question, growths)
  const level = (of: Nutrient): Level => levelOf(of, system, observations, present)
  return {
    question,
    system,
    facts,
    day,
    equipment,
    levels: { nitrate: level('nitrate'), phosphate: level('phosphate') },
    books: { nitrate: booksOf(present, ledgers, 'N'), phosphate: booksOf(present, ledgers, 'P') },
    growths,
    ...(meant === undefined ? {} : { meant }),
    hasAnimals: system.animals.some(({ count }) => count > 0) || arrived(question),
    poison: poisonOf(question),
    cycleOpen: (['ammonia', 'nitrite'] as const).some((of) => isRead(question, of)),
    ...mediumOf(question, equipment),
    hungry: crewOf(model.system, model.facts).flatMap(({ taxon, animals }) => {
      const [living, hunger] = [livingOf, hungerOf].map((of) => stateIndex(model, of(taxon).id))
      const there = middle(present, (w) => present.worlds[w].states[living]) >= 0.5
      return there && middle(present, (w) => ends[w][hunger]) > starving ? [animals.kind] : []
    }),
  }
}

const arrived = ({ events, present }: LadderQuestion): boolean =>
  events.some(({ kind, day }) => kind === 'animals added' && day <= present.day)

function poisonOf({ present, system, observations }: LadderQuestion): number {
  const acidity = pH('total', system.pH ?? usualPH)
  const last = readingsOf('ammonia', observations, present.day).at(-1)
  if (last?.belowDetection) return 0
  if (last) return last.value * unIonisedAmmoniaFraction(acidity, system.salinity_psu, system.temperature_C)
  return middle(present, (w) => unIonisedAmmonia_mg_N_L(present.model, present.worlds[w].states, acidity))
}

function isRead({ present, observations }: LadderQuestion, of: 'ammonia' | 'nitrite'): boolean {
  const last = readingsOf(of, observations, present.day).at(-1)
  const limit = present.model.facts.typical(`kit.${of}.detection`)
  return last !== undefined && !last.belowDetection && last.value > limit
}

function mediumOf(
  { present, from }: LadderQuestion,
  equipment: readonly Equipment[],
): Pick<Standing, 'medium'> {
  const reactor = pieceOf({ equipment }, 'ferric media reactor')
  const { model, worlds, day } = present
  const held = stateIndex(model, 'media.ferric/P')
  if (!reactor || held < 0 || (reactor.removed !== undefined && reactor.removed <= day)) return {}
  const left = middle(present, (w) => {
    const { parameters, settings, states } = worlds[w]
    return mediumLeft(model, parameters, settings)(states)
  })
  const days = Math.max(1, day - (reactor.placed ?? from))
  const interval = reactor.replaced_every_days
  return {
    medium: {
      left,
      days: interval === undefined ? days : Math.min(days, interval),
      held_mg: middle(present, (w) => convert(worlds[w].states[held], 'µmol', 'mg P')),
    },
  }
}
