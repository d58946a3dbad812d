import type { FactsOfSystem } from '@holdfast/facts'
import { broughtMass } from '../events/animals-arrive.ts'
import { goneMass } from '../events/animals-leave.ts'
import {
  arrivingMassSetting,
  arrivingSetting,
  leavingSetting,
  takenOutSetting,
} from '../events/crew-changes.ts'
import type { Event } from '../log.ts'
import { crewOf } from '../processes/crew.ts'
import { huntersSetting, rowsOf } from '../processes/predation.ts'
import type { System } from '../system.ts'
import type { Moment } from './moment.ts'

type AnimalEvent = Extract<Event, { readonly kind: 'animals added' | 'animals lost' | 'animals moved' }>

/** Animals that come, die, are given away or change their vessel. */
export function animalsChange(event: AnimalEvent, system: System, facts: FactsOfSystem): readonly Moment[] {
  switch (event.kind) {
    case 'animals added':
      return [...hunters(event, event.count, facts), ...arrives(event, system, facts)]
    case 'animals lost':
      return [
        ...hunters(event, -event.count, facts),
        ...leaves(event, system, facts, event.bodyTakenOut === true),
      ]
    case 'animals moved':
      // All vessels share their water, so a move within the system changes no account.
      return system.vessels.some(({ id }) => id === event.to)
        ? []
        : [...hunters(event, -event.count, facts), ...leaves(event, system, facts, true)]
  }
}

interface Said {
  readonly day: number
  readonly taxon: string
  readonly count: number
  readonly mass_g?: number
}

/** Where it is one that hunts, more or fewer hunt from now on. */
const hunters = ({ day, taxon }: Said, more: number, facts: FactsOfSystem): readonly Moment[] =>
  rowsOf({ taxon, kind: taxon }, facts).map(({ key }) => ({ day, add: { [huntersSetting(key)]: more } }))

const ofCrew = (taxon: string, system: System, facts: FactsOfSystem): boolean =>
  crewOf(system, facts).some((member) => member.taxon === taxon)

function arrives(
  { day, taxon, count, mass_g }: Said,
  system: System,
  facts: FactsOfSystem,
): readonly Moment[] {
  if (ofCrew(taxon, system, facts)) {
    const mass = count * (mass_g ?? facts.grazer(taxon)?.wetMass_g ?? 0)
    return [
      {
        day,
        happens: 'crew arrives',
        with: { [arrivingSetting(taxon)]: count, [arrivingMassSetting(taxon)]: mass },
      },
    ]
  }
  return mass_g === undefined
    ? []
    : [{ day, happens: 'animals added', with: { [broughtMass]: count * mass_g } }]
}

/** Of a fish whose mass neither the log nor the description tells, the body is not booked. */
function leaves(
  { day, taxon, count, mass_g }: Said,
  system: System,
  facts: FactsOfSystem,
  takenOut: boolean,
): readonly Moment[] {
  const out = { [takenOutSetting]: takenOut ? 1 : 0 }
  if (ofCrew(taxon, system, facts))
    return [{ day, happens: 'crew leaves', with: { ...out, [leavingSetting(taxon)]: count } }]
  const told = system.animals.find((one) => (one.taxon ?? one.kind) === taxon || one.kind === taxon)?.mass_g
  const mass = mass_g ?? told
  return mass === undefined
    ? []
    : [{ day, happens: 'animals lost', with: { ...out, [goneMass]: count * mass } }]
}
