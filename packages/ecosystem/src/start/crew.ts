import { animals, bodiesOf, hungerOf, livingOf, newcomersOf } from '../accounts/index.ts'
import type { Model } from '../assemble/model.ts'
import { bodyFact, crewOf } from '../processes/crew.ts'

type Put = (id: string, value: number) => void

/** Animals of the first day: as many as told, of the mass told or else grown, none new and none hungry. */
export function crew(model: Model, parameters: Float64Array, put: Put): void {
  const of = (fact: string): number => parameters[model.parameters.findIndex((one) => one.fact === fact)]
  for (const member of crewOf(model.system, model.facts)) {
    const mass = member.count * member.mass_g
    const account = bodiesOf(member.taxon).id
    put(livingOf(member.taxon).id, member.count)
    put(newcomersOf(member.taxon).id, 0)
    put(hungerOf(member.taxon).id, 0)
    put(`${account}/N`, mass * of(bodyFact(member, 'N')))
    put(`${account}/P`, mass * of(bodyFact(member, 'P')))
    put(`${account}/C`, mass * of(bodyFact(member, 'C')))
  }
  fish(model, of, put)
}

/** Fish of which a mass is told; grazers count their own. */
function fish(model: Model, of: (fact: string) => number, put: Put): void {
  const crewTaxa = new Set(crewOf(model.system, model.facts).map(({ taxon }) => taxon))
  const mass = model.system.animals
    .filter(({ role, taxon }) => role === 'fish' && !(taxon !== undefined && crewTaxa.has(taxon)))
    .reduce((sum, { count, mass_g = 0 }) => sum + count * mass_g, 0)
  put(`${animals.fish.id}/N`, mass * of('fish.body_n'))
  put(`${animals.fish.id}/P`, mass * of('fish.body_p'))
  put(`${animals.fish.id}/C`, mass * of('fish.body_c'))
}
