import { z } from './schema.ts'

/** A stored body of an older version, as JSON gives it. */
export type OldBody = Readonly<Record<string, unknown>>

/** Lifts a body of version n (its key) to n + 1. */
export type Lifts = Readonly<Record<number, (body: OldBody) => OldBody>>

/** A kind of entry: its name, its words, its newest body, and the way from each older one. */
export interface Kind<Name extends string, Body extends z.ZodType> {
  readonly name: Name
  readonly title: string
  /** The newest version of the body. */
  readonly v: number
  readonly body: Body
  readonly lifts: Lifts
}

/**
 * Declares a kind. Unknown fields of a body are kept, so that an entry written by a newer program
 * passes through an older one unharmed.
 */
export function kind<Name extends string, Shape extends z.ZodRawShape>(declared: {
  name: Name
  title: string
  v: number
  body: Shape
  lifts?: Lifts
}): Kind<Name, z.ZodObject<Shape, z.core.$loose>> {
  return { ...declared, body: z.looseObject(declared.body), lifts: declared.lifts ?? {} }
}

/** What the keeper typed or the cell held, word for word. */
export const asTyped = z.string().max(20_000)

/** A finite number above 0. */
export const positive = z.number().positive()

/** A share, 0 to 1. */
export const share = z.number().min(0).max(1)
