import type { About, Blank, Typed } from './blank.ts'
import type { Filled, NotUnderstood } from './fill-in.ts'
import { z } from './schema.ts'

/** A stored body of an older version, as JSON gives it. */
export type OldBody = Readonly<Record<string, unknown>>

/** Lifts a body of version n (its key) to n + 1. */
export type Lifts = Readonly<Record<number, (body: OldBody) => OldBody>>

/** A kind of entry: its name, its words, its newest body, the way from each older one, and its blanks. */
export interface Kind<Name extends string = string, Body extends z.ZodMiniType = z.ZodMiniType> {
  readonly name: Name
  readonly title: string
  /** The newest version of the body. */
  readonly v: number
  readonly body: Body
  readonly lifts: Lifts
  /** What a person fills in, given what is filled in already; none for what the program writes itself. */
  blanks(about: About, typed: Typed): readonly Blank[]
  /** The body out of blanks that were read, or what does not fit together. */
  understand(filled: Filled): z.output<Body> | NotUnderstood
  /** The texts that, filled in, give this body again: a correction starts from them. */
  fills(body: z.output<Body>): Typed
  /** One sentence for lists and screen readers. */
  says(body: z.output<Body>): string
  /**
   * What the entry settles from its moment on, such as the ration of a feed; nothing where entries of one
   * moment add up. Of two that settle the same at one moment the later received holds.
   */
  settles(body: z.output<Body>): string | undefined
}

type Body<Shape extends z.core.$ZodShape> = z.ZodMiniObject<Shape, z.core.$loose>

/** What a kind declares; a kind without blanks is written by the program alone. */
interface Declared<Name extends string, Shape extends z.core.$ZodShape> {
  readonly name: Name
  readonly title: string
  readonly v: number
  readonly body: Shape
  readonly lifts?: Lifts
  readonly blanks?: (about: About, typed: Typed) => readonly Blank[]
  readonly understand?: (filled: Filled) => z.output<Body<Shape>> | NotUnderstood
  readonly fills?: (body: z.output<Body<Shape>>) => Typed
  readonly says: (body: z.output<Body<Shape>>) => string
  readonly settles?: (body: z.output<Body<Shape>>) => string
}

/**
 * Declares a kind. Unknown fields of a body are kept, so that an entry written by a newer program
 * passes through an older one unharmed; for the same reason a field that may be left out can be added
 * without a new version.
 */
export function kind<Name extends string, Shape extends z.core.$ZodShape>(
  declared: Declared<Name, Shape>,
): Kind<Name, Body<Shape>> {
  return {
    lifts: {},
    blanks: () => [],
    understand: () => {
      throw new Error(`kind ${declared.name} is written by the program and has no blanks`)
    },
    fills: () => ({}),
    settles: () => undefined,
    ...declared,
    body: z.looseObject(declared.body) as Body<Shape>,
  }
}

/** What the keeper typed or the cell held, word for word. */
export const asTyped = z.string().check(z.maxLength(20_000))

/** What was typed into each blank, kept beside what was understood. */
export const typedTexts = z.exactOptional(z.record(z.string(), asTyped))

/** A word or name that is there. */
export const name = z.string().check(z.minLength(1), z.maxLength(200))

/** A finite number above 0. */
export const positive = z.number().check(z.positive())

/** A finite number, 0 or more. */
export const notNegative = z.number().check(z.minimum(0))

/** A share, 0 to 1. */
export const share = z.number().check(z.minimum(0), z.maximum(1))

/** A whole number, 1 or more. */
export const count = z.int().check(z.positive())
