import type { JournalSearch, Logbook, SystemLogs } from '@holdfast/logbook'
import type { z } from 'zod'

/** What the routes work on. */
export interface Services {
  readonly logbook: Logbook
  readonly search: JournalSearch
  readonly logs: SystemLogs
  /** Where the log lives, in words that follow "Your log is kept". */
  readonly kept: string
  /** Names this start of the program. */
  readonly start: string
}

/** JSON that goes out. */
export interface Json<Schema extends z.ZodType = z.ZodType> {
  readonly says: string
  readonly schema: Schema
}

/** Bytes that go out, of the media type that the reply names in its headers. */
export interface Bytes {
  readonly says: string
  readonly bytes: true
}

/** What a request brings: JSON of a form, or bytes of any media type. */
export interface Brought {
  readonly says: string
  /** JSON where there is one; bytes else. */
  readonly schema?: z.ZodType
  /** How many bytes at most. */
  readonly most: number
}

type BodyOf<Answer> =
  Answer extends Json<infer Schema> ? z.input<Schema> : Uint8Array<ArrayBuffer> | ReadableStream<Uint8Array>

export type Answers = Readonly<Record<number, Json | Bytes>>

/** What a route may answer: one of its declared statuses, with the body declared for it. */
export type Reply<Declared extends Answers> = {
  [Status in keyof Declared & number]: {
    readonly status: Status
    readonly body: BodyOf<Declared[Status]>
    /** Its media type among them, where the body is bytes. */
    readonly headers?: Readonly<Record<string, string>>
  }
}[keyof Declared & number]

/** A request, its path and query as understood. */
export interface Asked<Path extends z.ZodObject, Query extends z.ZodObject> {
  readonly path: z.output<Path>
  readonly query: z.output<Query>
  /** The JSON or the bytes that it brought; looked at by the route, which has the words for what is wrong. */
  readonly body: unknown
  /** Media type of what it brought. */
  readonly type: string
}

type AnyObject = z.ZodObject

/**
 * One route: what the document says of it, and what it does. The compiler holds the answer to what is
 * declared; the tests hold the running app to the document.
 */
export interface Route<
  Path extends AnyObject = AnyObject,
  Query extends AnyObject = AnyObject,
  Declared extends Answers = Answers,
> {
  /** Unique name of the act, such as `listEntries`. */
  readonly name: string
  readonly method: 'get' | 'post' | 'put'
  /** With parameters in braces, such as /api/systems/{system}. */
  readonly at: string
  readonly says: string
  readonly path?: Path
  readonly query?: Query
  readonly brings?: Brought
  readonly answers: Declared
  answer(
    asked: Asked<Path, Query>,
    services: Services,
  ): Reply<NoInfer<Declared>> | Promise<Reply<NoInfer<Declared>>>
}

/** Declares a route; in the list of routes its own types no longer matter. */
export function route<Path extends AnyObject, Query extends AnyObject, Declared extends Answers>(
  declared: Route<Path, Query, Declared>,
): Route {
  return declared as unknown as Route
}
