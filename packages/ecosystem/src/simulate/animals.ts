import { grazer } from '@holdfast/facts'
import { broughtMass } from '../events/animals-arrive.ts'
import {
  arrivingMassSetting,
  arrivingSetting,
  leavingSetting,
  takenOutSetting,
} from '../events/crew-changes.ts'
import type { Event } from '../log.ts'
import { crewOf } from '../processes/crew.ts'
import type { System } from '../system.ts'
import type { Moment } from './moment.ts'

type AnimalEvent = Extract<Event, { readonly kind: 'animals added' | 'animals lost' | 'animals moved' }>

/** Animals that come, die, are given away or change their vessel. */
export function animalsChange(event: AnimalEvent, system: System): readonly Moment[] {
  const { day, taxon, count } = event
  const known = crewOf(system).some((member) => member.taxon === taxon)
  switch (event.kind) {
    case 'animals added': {
      const mass = event.mass_g ?? (known ? grazer(taxon)?.wetMass_g : undefined)
      if (known)
        return [
          {
            day,
            happens: 'crew arrives',
            with: { [arrivingSetting(taxon)]: count, [arrivingMassSetting(taxon)]: count * (mass ?? 0) },
          },
        ]
      return mass === undefined
        ? []
        : [{ day, happens: 'animals added', with: { [broughtMass]: count * mass } }]
    }
    case 'animals lost':
      return [leaves(day, taxon, count, event.bodyTakenOut === true)]
    case 'animals moved':
      // All vessels share their water, so a move within the system changes no account.
      return system.vessels.some(({ id }) => id === event.to) ? [] : [leaves(day, taxon, count, true)]
  }
}

const leaves = (day: number, taxon: string, count: number, takenOut: boolean): Moment => ({
  day,
  happens: 'crew leaves',
  with: { [leavingSetting(taxon)]: count, [takenOutSetting]: takenOut ? 1 : 0 },
})
