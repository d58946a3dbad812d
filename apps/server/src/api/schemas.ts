import type { Event, Observation } from '@holdfast/ecosystem'
import {
  anyEntry,
  envelope,
  type JournalLine,
  kinds,
  type Outbreak,
  type OwnFact,
  type Stored,
  stages,
  systemDescription,
} from '@holdfast/logbook'
import { z } from 'zod'

/** Schemas that have a name in the document, each written down there once. */
export const components = z.registry<{ id: string }>()

const named = <Schema extends z.ZodType>(id: string, schema: Schema): Schema => {
  components.add(schema, { id })
  return schema
}

components.add(systemDescription, { id: 'System' })
components.add(anyEntry, { id: 'Entry' })

const [first, ...others] = kinds.map(({ name }) => name)
export const entryKind = named('EntryKind', z.enum([first, ...others]))

/** What is wrong, in the keeper's words. */
export const issue = named(
  'Issue',
  z.object({
    code: z.string(),
    where: z.string().describe('The field, entry or file.'),
    got: z.string().describe('What was there.'),
    accepted: z.string().describe('What would be right.'),
    next: z.string().describe('What to do.'),
    inWords: z.string().exactOptional().describe('The whole in one sentence, where it has its own words.'),
  }),
)

export const refusal = named('Refusal', z.object({ issues: z.array(issue).min(1) }))

/** An entry as a client sends it: every version ever released is taken, and unknown fields are kept. */
export const sentEntry = named(
  'Sent',
  z
    .union([anyEntry, envelope])
    .describe('The newest form of each kind is `Entry`; older versions of a body are taken as well.'),
)

/** The form of a stored entry is that of its kind, which the compiler does not follow through the list. */
export const storedEntry = named(
  'Stored',
  z.intersection(anyEntry, z.looseObject({ knownAt: z.iso.datetime() })),
) as unknown as z.ZodType<Stored>

export const line = named(
  'JournalLine',
  z.object({
    entry: storedEntry,
    state: z.enum(['holds', 'corrected', 'taken back']),
    by: z.uuid().exactOptional().describe('The entry that corrected it or took it back.'),
    rivals: z.array(z.uuid()).describe('Other corrections of the same entry; the latest received holds.'),
    says: z.string().describe('The entry in one sentence.'),
  }),
) as unknown as z.ZodType<JournalLine>

const day = z.number().describe('Days of 86,400 s since 1970-01-01T00:00Z.')

/** The compiler holds these two to what the model takes. */
export const observation: z.ZodType<Observation> = named(
  'Observation',
  z.object({
    day,
    quantity: z.enum(['nitrate', 'phosphate', 'ammonia', 'nitrite', 'cover']),
    value: z.number(),
    belowDetection: z.boolean(),
    surface: z.string().exactOptional(),
    algae: z.string().exactOptional(),
    entry: z.string().exactOptional(),
  }),
)

export const ownFact: z.ZodType<OwnFact> = named(
  'OwnFact',
  z.object({
    fact: z.string().describe('Id in the catalogue.'),
    low: z.number(),
    typical: z.number(),
    high: z.number(),
    unit: z.string(),
    reason: z.string(),
    source: z.string().exactOptional(),
  }),
)

const dated = z.array(z.object({ what: z.string(), on: z.string().describe('ISO date.') })).readonly()

/** An outbreak with its life so far. */
export const outbreak: z.ZodType<Outbreak> = named(
  'Outbreak',
  z.object({
    name: z.string().describe('What the keeper calls it.'),
    stage: z.enum(stages),
    from: z.string().describe('ISO date of its first entry.'),
    since: z.string().describe('ISO date from which on it stands at this stage.'),
    algae: z.string().exactOptional(),
    surfaces: z.array(z.string()).readonly(),
    carriedIn: z.string().exactOptional(),
    done: dated,
    stopped: dated,
    worked: z.string().describe('Of one that is back: what was done last before it ended.').exactOptional(),
  }),
)

/** What the model takes as an event; the fields of each kind stand with the entry that it came from. */
export const event = named(
  'Event',
  z.looseObject({ day, kind: z.string(), entry: z.string().exactOptional() }),
) as unknown as z.ZodType<Event>
