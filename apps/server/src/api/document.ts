import { z } from 'zod'
import type { Answers, Brought, Route } from './route.ts'
import { components, refusal } from './schemas.ts'

type Tree = Readonly<Record<string, unknown>>

/** Writes a schema into the document. */
type Refer = (schema: z.ZodType) => Tree

/** An OpenAPI document. */
export interface OpenApi extends Tree {
  readonly openapi: string
}

/**
 * The routes as an OpenAPI document (version 3.1.1, whose schemas are JSON Schema of 2020-12). All of
 * it is made from the declarations that the app runs on.
 */
export function openApiDocument(routes: readonly Route[]): OpenApi {
  const schemas: Record<string, unknown> = {}
  const refer: Refer = (schema) => referTo(schema, schemas)
  const responses = commonResponses(refer)
  const paths: Record<string, Record<string, unknown>> = {}
  for (const one of routes) {
    const path = paths[one.at] ?? {}
    path[one.method] = operation(one, refer)
    paths[one.at] = path
  }
  return {
    openapi: '3.1.1',
    info: {
      title: 'Holdfast',
      version: '1',
      description: 'The log of reef aquaria, on the machine where Holdfast runs.',
    },
    paths,
    components: { schemas, responses },
  }
}

function operation(one: Route, refer: Refer): Tree {
  const parameters = [...fields('path', one.path, refer), ...fields('query', one.query, refer)]
  return {
    operationId: one.name,
    summary: one.says,
    ...(parameters.length > 0 && { parameters }),
    ...(one.brings && { requestBody: brought(one.brings, refer) }),
    responses: { ...answers(one.answers, refer), ...commonAnswers(one) },
  }
}

function fields(place: 'path' | 'query', of: z.ZodObject | undefined, refer: Refer) {
  const { properties = {}, required = [] } = of === undefined ? {} : (refer(of) as Fields)
  return Object.entries(properties).map(([name, { description, ...schema }]) => ({
    name,
    in: place,
    required: required.includes(name) && !('default' in schema),
    ...(description !== undefined && { description }),
    schema,
  }))
}

interface Fields {
  readonly properties?: Readonly<Record<string, Tree>>
  readonly required?: readonly string[]
}

const brought = ({ says, schema }: Brought, refer: Refer): Tree => ({
  description: says,
  required: true,
  content: schema === undefined ? { '*/*': {} } : { 'application/json': { schema: refer(schema) } },
})

const answers = (of: Answers, refer: Refer): Tree =>
  Object.fromEntries(
    Object.entries(of).map(([status, answer]) => [
      status,
      {
        description: answer.says,
        content: 'bytes' in answer ? { '*/*': {} } : { 'application/json': { schema: refer(answer.schema) } },
      },
    ]),
  )

/** What the server answers beside the routes, by name: its status, and which routes it may meet. */
const common: Readonly<Record<string, Common>> = {
  NotUnderstood: {
    status: 400,
    says: 'The request is not understood.',
    meets: ({ path, query, brings }) => (path ?? query ?? brings?.schema) !== undefined,
  },
  OtherSite: { status: 403, says: 'Host or Origin is not this machine.', meets: () => true, isText: true },
  TooLarge: { status: 413, says: 'It is too large.', meets: ({ brings }) => brings !== undefined },
  OtherType: {
    status: 415,
    says: 'It is not application/json.',
    meets: ({ brings }) => brings?.schema !== undefined,
  },
  Failed: { status: 500, says: 'The store refused, or the program failed.', meets: () => true },
}

interface Common {
  readonly status: number
  readonly says: string
  readonly meets: (route: Route) => boolean
  readonly isText?: true
}

const commonAnswers = (route: Route): Tree =>
  Object.fromEntries(
    Object.entries(common)
      .filter(([, { meets }]) => meets(route))
      .map(([name, { status }]) => [status, { $ref: `#/components/responses/${name}` }]),
  )

const commonResponses = (refer: Refer): Tree =>
  Object.fromEntries(
    Object.entries(common).map(([name, { says, isText }]) => [
      name,
      isText
        ? { description: says, content: { 'text/plain': { schema: { type: 'string' } } } }
        : { description: says, content: { 'application/json': { schema: refer(refusal) } } },
    ]),
  )

/** The schema in JSON; what has a name is put among `schemas` and referred to. */
function referTo(schema: z.ZodType, schemas: Record<string, unknown>): Tree {
  // Within an object, a named schema is referred to even where it is all there is.
  const { properties, $defs } = rewritten(
    z.toJSONSchema(z.object({ it: schema }), { metadata: components, io: 'input' }),
  )
  Object.assign(schemas, $defs)
  return properties.it
}

interface Written {
  readonly properties: { readonly it: Tree }
  readonly $defs?: Tree
}

/** References as OpenAPI has them. */
function rewritten(schema: object): Written {
  return JSON.parse(JSON.stringify(schema).replaceAll('"#/$defs/', '"#/components/schemas/'))
}
