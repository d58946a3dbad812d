import { algaeFacts } from './algae-facts.ts'
import algaeCommon from './data/algae-common.json' with { type: 'json' }
import bands from './data/bands.json' with { type: 'json' }
import bodies from './data/bodies.json' with { type: 'json' }
import carbonDosing from './data/carbon-dosing.json' with { type: 'json' }
import chemistry from './data/chemistry.json' with { type: 'json' }
import commissioning from './data/commissioning.json' with { type: 'json' }
import composition from './data/composition.json' with { type: 'json' }
import corals from './data/corals.json' with { type: 'json' }
import crew from './data/crew.json' with { type: 'json' }
import crewPlan from './data/crew-plan.json' with { type: 'json' }
import cultivated from './data/cultivated.json' with { type: 'json' }
import denitrification from './data/denitrification.json' with { type: 'json' }
import feeding from './data/feeding.json' with { type: 'json' }
import filters from './data/filters.json' with { type: 'json' }
import grazing from './data/grazing.json' with { type: 'json' }
import kit from './data/kit.json' with { type: 'json' }
import ladder from './data/ladder.json' with { type: 'json' }
import leaching from './data/leaching.json' with { type: 'json' }
import mineralisation from './data/mineralisation.json' with { type: 'json' }
import nitrification from './data/nitrification.json' with { type: 'json' }
import nitrogenFixation from './data/nitrogen-fixation.json' with { type: 'json' }
import outlook from './data/outlook.json' with { type: 'json' }
import oxygen from './data/oxygen.json' with { type: 'json' }
import patches from './data/patches.json' with { type: 'json' }
import silicate from './data/silicate.json' with { type: 'json' }
import stands from './data/stands.json' with { type: 'json' }
import start from './data/start.json' with { type: 'json' }
import surfaceTransfer from './data/surface-transfer.json' with { type: 'json' }
import unexplained from './data/unexplained.json' with { type: 'json' }
import water from './data/water.json' with { type: 'json' }
import type { Fact } from './fact.ts'
import { grazerFacts } from './grazer-facts.ts'
import { neighbourFacts } from './neighbour-facts.ts'
import { UnknownKey } from './unknown-key.ts'

// One line a family; the numbers of algae kinds and grazers come from their own tables.
const all: readonly Fact[] = [
  ...(feeding as readonly Fact[]),
  ...(bodies as readonly Fact[]),
  ...(mineralisation as readonly Fact[]),
  ...(nitrification as readonly Fact[]),
  ...(denitrification as readonly Fact[]),
  ...(chemistry as readonly Fact[]),
  ...(leaching as readonly Fact[]),
  ...(filters as readonly Fact[]),
  ...(carbonDosing as readonly Fact[]),
  ...(silicate as readonly Fact[]),
  ...(oxygen as readonly Fact[]),
  ...(water as readonly Fact[]),
  ...(algaeCommon as readonly Fact[]),
  ...(cultivated as readonly Fact[]),
  ...(corals as readonly Fact[]),
  ...(stands as readonly Fact[]),
  ...algaeFacts,
  ...(grazing as readonly Fact[]),
  ...grazerFacts,
  ...(crew as readonly Fact[]),
  ...(crewPlan as readonly Fact[]),
  ...(commissioning as readonly Fact[]),
  ...neighbourFacts,
  ...(nitrogenFixation as readonly Fact[]),
  ...(surfaceTransfer as readonly Fact[]),
  ...(patches as readonly Fact[]),
  ...(start as readonly Fact[]),
  ...(kit as readonly Fact[]),
  ...(unexplained as readonly Fact[]),
  ...(outlook as readonly Fact[]),
  ...(bands as readonly Fact[]),
  ...(composition as readonly Fact[]),
  ...(ladder as readonly Fact[]),
]

const byId = new Map(all.map((one) => [one.id, one]))

/** All facts, family by family. */
export const facts = (): readonly Fact[] => all

/**
 * The fact of an id, such as foam.k.tank.
 * @throws UnknownKey with the nearest ids
 */
export function fact(id: string): Fact {
  const found = byId.get(id)
  if (found === undefined) throw new UnknownKey('unknown-fact', 'Fact', id, byId.keys())
  return found
}
