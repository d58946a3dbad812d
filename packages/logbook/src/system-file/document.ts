import { z } from '../entries/schema.ts'
import {
  animalRoles,
  carbonSubstances,
  filterKinds,
  newWaterKinds,
  otherEquipmentKinds,
  phosphateMedia,
  reactorFoods,
  rockKinds,
  surfaceKinds,
  vesselKinds,
} from '../entries/system-description.ts'
import * as text from './measured-text.ts'

const optional = z.exactOptional
/** A list that is empty where the key is left out. */
const listOf = <One extends z.ZodMiniType>(one: One) => z._default(z.array(one), [])
const name = z.string().check(z.trim(), z.minLength(1))
const date = z.iso.date()

const hours = z.number().check(z.minimum(0), z.maximum(24), z.meta({ description: 'Hours of light a day' }))

const vessel = z.strictObject({
  id: name,
  kind: z.enum(vesselKinds),
  water: text.volume,
  glass: optional(text.volume),
  length: optional(text.centimetres),
})

const flow = z.strictObject({ between: z.tuple([name, name]), 'each way': text.flow })

const surface = z.strictObject({
  id: name,
  vessel: name,
  kind: z.enum(surfaceKinds),
  area: text.area,
  light: text.light,
  hours,
  age: text.age,
  enclosed: optional(z.boolean()),
  opening: optional(text.millimetres),
  'hand cleaned every': optional(text.interval),
})

const rock = z.strictObject({
  kind: z.enum(rockKinds),
  mass: text.kilograms,
  age: text.age,
  'cured for': optional(text.age),
})

/** What is left out is usual of the kind, which is then one of `newWaterKinds`. */
const newWater = z.strictObject({
  kind: optional(name.check(z.meta({ examples: newWaterKinds }))),
  nitrate: optional(text.nitrate),
  phosphate: optional(text.phosphate),
  silicate: optional(text.silicate),
})

const feed = z.strictObject({
  kind: name,
  amount: text.gramsPerDay,
  nitrogen: optional(text.massShare),
  phosphorus: optional(text.massShare),
  carbon: optional(text.massShare),
  'dry matter': optional(text.massShare),
})

const equipment = z.discriminatedUnion('kind', [
  z.strictObject({
    kind: z.literal('water change'),
    volume: text.volume,
    every: text.interval,
    first: optional(date),
  }),
  z.strictObject({
    kind: z.literal('skimmer'),
    'rated for': optional(text.volume),
    'cup emptied every': optional(text.interval),
    air: optional(text.flow),
    off: optional(z.array(z.tuple([date, date]))),
  }),
  z.strictObject({
    kind: z.literal('ferric media reactor'),
    medium: optional(z.enum(phosphateMedia)),
    mass: text.grams,
    flow: optional(text.flow),
    placed: optional(date),
    removed: optional(date),
    'replaced every': optional(text.interval),
    capacity: optional(z.tuple([text.phosphorusPerGram, text.phosphorusPerGram, text.phosphorusPerGram])),
  }),
  z.strictObject({ kind: z.literal('continuous water change'), 'a day': text.litresPerDay }),
  // Loose: files of a time without processes for these keep what they said.
  z.looseObject({
    kind: z.enum(filterKinds),
    'changed every': optional(text.interval),
    mesh: optional(text.micrometres),
  }),
  z.strictObject({ kind: z.literal('phosphate binder'), 'lanthanum a day': text.milligramsPerDay }),
  z.looseObject({
    kind: z.literal('activated carbon'),
    mass: optional(text.grams),
    placed: optional(date),
    'replaced every': optional(text.interval),
  }),
  z.looseObject({
    kind: z.literal('organic carbon dosing'),
    substance: optional(z.enum(carbonSubstances)),
    'a day': optional(text.millilitresPerDay),
    since: optional(date),
    schedule: optional(z.array(z.strictObject({ from: date, 'ethanol a day': text.millilitresPerDay }))),
  }),
  z.strictObject({
    kind: z.literal('denitrifying reactor'),
    fed: z.enum(reactorFoods),
    media: text.volume,
    flow: optional(text.flow),
  }),
  z.looseObject({ kind: z.literal('ultraviolet lamp'), flow: optional(text.flow) }),
  z.strictObject({
    kind: z.literal('refugium'),
    vessel: optional(name),
    algae: optional(name.check(z.meta({ examples: ['Chaetomorpha', 'Ulva', 'Caulerpa', 'Gracilaria'] }))),
    mass: optional(text.drainedGrams),
    'dry matter': optional(text.drainedShare),
    nitrogen: optional(text.dryMassShare),
    phosphorus: optional(text.dryMassShare),
    'lit area': optional(text.area),
    light: optional(text.light),
    hours: optional(hours),
    'dark since': optional(date),
    harvest: optional(text.drainedGrams),
    'harvested every': optional(text.interval),
    'last harvest': optional(date),
  }),
  z.strictObject({
    kind: z.literal('turf scrubber'),
    screen: optional(text.area),
    light: optional(text.light),
    hours: optional(hours),
    'harvested every': optional(text.interval),
  }),
  // These have no process of their own; their keys are kept as they are.
  z.looseObject({ kind: z.enum(otherEquipmentKinds) }),
])

const animals = z.strictObject({
  kind: name,
  taxon: optional(name),
  count: z.int().check(z.positive()),
  mass: optional(text.grams),
  'adult size': optional(text.centimetres),
  role: z.enum(animalRoles),
  vessel: optional(name),
})

/** A share, 0 to 1. */
const part = z.number().check(z.minimum(0), z.maximum(1))

const ownAnimal = z.strictObject({
  taxon: name.check(z.meta({ description: 'What you and your log call it; no taxon of the catalogue' })),
  like: name.check(
    z.meta({ description: 'Taxon of the catalogue: it is like that one but for what you tell' }),
  ),
  'adult size': optional(text.centimetres),
  mass: optional(text.grams),
  eats: optional(text.dryGramsPerDay),
  needs: optional(text.dryGramsPerDay),
  'least glass': optional(text.volume),
  'least length': optional(text.centimetres),
  coldest: optional(text.temperature),
  warmest: optional(text.temperature),
  'reef safe': optional(z.enum(['yes', 'with caution', 'no'])),
  caution: optional(name.check(z.meta({ description: 'What there is to mind with it' }))),
  'lost in a year': optional(part),
  'US dollars': optional(z.number().check(z.minimum(0))),
  tastes: optional(
    z.record(name, part).check(
      z.meta({
        description: 'How willingly it eats a kind of algae, or detritus, 0 to 1 of its appetite',
        examples: [{ hair_green: 0.8, bubble: 0 }],
      }),
    ),
  ),
})

/** A share of a surface, 0 to 1. */
const cover = part

/** The system file: a JSON document that the keeper writes, values with their units as people write them. */
export const systemDocument = z.strictObject({
  $schema: optional(z.string()),
  id: optional(
    name.check(z.meta({ description: 'Without it, made of the name; keep it when the name changes' })),
  ),
  name,
  timeZone: name.check(
    z.meta({ description: 'IANA zone in which the dates are meant', examples: ['Europe/Berlin'] }),
  ),
  vessels: z.array(vessel).check(z.minLength(1)),
  flow: listOf(flow),
  surfaces: z.array(surface).check(z.minLength(1)),
  rock: listOf(rock),
  sand: optional(z.strictObject({ mass: text.kilograms, depth: text.centimetres })),
  'source water': newWater,
  'salt mix': newWater,
  salinity: text.salinity,
  temperature: text.temperature,
  pH: optional(z.number().check(z.minimum(0), z.maximum(14))),
  evaporation: text.litresPerDay,
  feeds: listOf(feed),
  equipment: listOf(equipment),
  animals: listOf(animals),
  'own animals': optional(z.array(ownAnimal)),
  corals: optional(z.strictObject({ kind: name, area: text.area })),
  algae: listOf(z.strictObject({ kind: name, surface: name, cover })),
  unsaid: optional(
    z.array(name).check(
      z.meta({
        description:
          'Places that nobody said anything about: what stands there is usual. A ration among them is taken in a wide band',
        examples: [['feeds 1, amount', 'evaporation']],
      }),
    ),
  ),
})

export type SystemDocument = z.output<typeof systemDocument>

/** The same as the keeper writes it: values are texts with their units. */
export type SystemText = z.input<typeof systemDocument>

/** The JSON Schema of the system file, for editors and the docs. */
export function systemFileJsonSchema(): Record<string, unknown> {
  return { ...z.toJSONSchema(systemDocument, { io: 'input' }), title: 'System file' }
}
