/** The form of an experiment: what was set up, what was done, and what was measured. */
import * as z from 'zod/mini'

z.config(z.locales.en())

const optional = z.exactOptional
const text = z.string().check(z.trim(), z.minLength(1))
const number = z.number()
const day = z.number().check(z.minimum(0))
const share = z.number().check(z.minimum(0), z.maximum(1))
const above0 = z.number().check(z.positive())

/** One event comes once on its day, or every so many days until a day. */
const when = { day, every: optional(above0), until: optional(day) }

const happening = z.discriminatedUnion('kind', [
  z.strictObject({
    ...when,
    kind: z.literal('dose'),
    substance: z.enum([
      'ammonium chloride',
      'sodium nitrate',
      'potassium nitrate',
      'monopotassium phosphate',
      'disodium phosphate',
    ]),
    mass_g: number,
  }),
  z.strictObject({ ...when, kind: z.literal('water change'), volume_L: above0 }),
  z.strictObject({
    ...when,
    kind: z.literal('hand removal'),
    surface: text,
    algae: text,
    share,
    leftToDrift: z._default(z.boolean(), false),
  }),
  z.strictObject({
    ...when,
    kind: z.literal('light change'),
    surface: optional(text),
    light_umol_m2_s: optional(day),
    light_h_per_day: optional(z.number().check(z.minimum(0), z.maximum(24))),
  }),
  z.strictObject({ ...when, kind: z.literal('feed change'), g_per_day: day }),
  z.strictObject({ ...when, kind: z.literal('siphoning'), part: optional(share) }),
  z.strictObject({
    ...when,
    kind: z.literal('animals added'),
    taxon: text,
    count: z.int().check(z.positive()),
    mass_g: optional(above0),
  }),
  z.strictObject({
    ...when,
    kind: z.literal('animals lost'),
    taxon: text,
    count: z.int().check(z.positive()),
  }),
])

/** Numbers by name. */
const amounts = z.record(z.string(), number)

/** What may differ between treatments. */
const setUp = {
  /** µmol/L of ammonia, nitrite, nitrate and phosphate (of N and P) in the water on day 0. */
  start: optional(
    z.strictObject({
      ammonia: optional(day),
      nitrite: optional(day),
      nitrate: optional(day),
      phosphate: optional(day),
    }),
  ),
  /** µmol of other accounts on day 0, such as water.skimmable/C. */
  stocks: optional(amounts),
  /** Facts that the conditions fix, in the unit of the catalogue. Never used to fit. */
  set: optional(amounts),
  schedule: optional(z.array(happening)),
}

const treatment = z.strictObject({ ...setUp, system: optional(z.record(z.string(), z.unknown())) })

/** On one day, or the mean from a day to a day. */
const span = { on: optional(day), from: optional(day), to: optional(day) }

const accounts = z.array(text).check(z.minLength(1))

/** What is read out of a run. Accounts may hold a * for any part of their name. */
const reading = z.discriminatedUnion('read', [
  z.strictObject({ read: z.literal('concentration'), in: optional(text), of: accounts, unit: text, ...span }),
  z.strictObject({
    read: z.literal('amount'),
    in: optional(text),
    of: accounts,
    unit: text,
    per: optional(above0),
    ...span,
  }),
  z.strictObject({
    read: z.literal('flow'),
    in: optional(text),
    atom: z.enum(['N', 'P', 'C', 'Si']),
    process: optional(text),
    out: optional(text),
    into: optional(text),
    unit: text,
    per: optional(above0),
    from: day,
    to: day,
  }),
  z.strictObject({ read: z.literal('cover'), in: optional(text), surface: text, algae: accounts, ...span }),
  z.strictObject({ read: z.literal('organic carbon'), in: optional(text), ...span }),
  z.strictObject({ read: z.literal('living'), in: optional(text), taxon: text, ...span }),
  /** The first day on which accounts hold this share of the most that they ever hold. */
  z.strictObject({ read: z.literal('day of share'), in: optional(text), of: accounts, share }),
])

const measured = z.strictObject({
  says: text,
  of: reading,
  /** Divided by this reading, where a ratio was published. */
  over: optional(reading),
  /** The figure that was published, with its ends; or the side of 1, or of 0 to 1, on which it lies. */
  value: optional(number),
  low: optional(number),
  high: optional(number),
  above: optional(number),
  below: optional(number),
  unit: z._default(z.string(), ''),
  /** Factor by which the middle may miss what was published. */
  within: optional(above0),
  provenance: z.enum(['read', 'memory', 'arithmetic', 'common practice']),
  /** Fact of the catalogue whose band rests on this very figure: then it is no independent check. */
  rests: optional(text),
  /** What of the set-up was changed after the figure had been seen beside the model: then it is no blind check. */
  mended: optional(text),
  /** A miss that is known: its reason, or 'not understood'. */
  miss: optional(text),
})

export const experimentDocument = z.strictObject({
  $schema: optional(z.string()),
  title: text,
  source: text,
  conditions: text,
  /** What had to be assumed because the source does not state it. */
  assumed: text,
  days: above0,
  system: z.record(z.string(), z.unknown()),
  ...setUp,
  treatments: z._default(z.record(z.string(), treatment), {}),
  measured: z.array(measured).check(z.minLength(1)),
})

export type ExperimentDocument = z.output<typeof experimentDocument>
export type Happening = z.output<typeof happening>
export type Reading = z.output<typeof reading>
export type Measured = z.output<typeof measured>
export type Treatment = z.output<typeof treatment>
