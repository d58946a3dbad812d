import { Ajv2020 } from 'ajv/dist/2020.js'
import type { Hono } from 'hono'
import { openApiDocument } from '../document.ts'
import { routes } from '../routes.ts'

/** The document as it is sent. */
export const document = JSON.parse(JSON.stringify(openApiDocument(routes)))

const ajv = new Ajv2020({ strict: false, validateFormats: false, allErrors: true })
ajv.addSchema(document, 'document')

/**
 * Asks the app, and holds what it answers to the document: a status that is declared there, of the media
 * type and the form that are declared for it.
 *
 * @param route  as the document names it, such as 'get /api/systems/{system}'
 */
export async function asked(
  server: Hono,
  route: string,
  address: string,
  request: RequestInit = {},
): Promise<Response> {
  const [method = '', at = ''] = route.split(' ')
  const answer = await server.request(`http://localhost:4173${address}`, {
    ...request,
    method: method.toUpperCase(),
  })
  const told = document.paths[at]?.[method]?.responses[answer.status]
  const common = told?.$ref?.split('/').at(-1)
  const declared = common === undefined ? told : document.components.responses[common]
  if (declared === undefined) throw new Error(`${route}: ${answer.status} is not in the document`)
  const type = (answer.headers.get('content-type') ?? '').replace(/;.*/, '')
  if ('*/*' in declared.content) return answer
  if (!(type in declared.content)) throw new Error(`${route}: ${answer.status} comes as "${type}"`)
  if (type === 'application/json') {
    const place =
      common === undefined
        ? ['paths', at, method, 'responses', String(answer.status)]
        : ['components', 'responses', common]
    const pointer = [...place, 'content', type, 'schema']
    const path = pointer.map((part) => encodeURIComponent(part.replaceAll('/', '~1'))).join('/')
    const isRight = ajv.compile({ $ref: `document#/${path}` })
    if (!isRight(await answer.clone().json()))
      throw new Error(`${route}: ${answer.status} is not of its form: ${ajv.errorsText(isRight.errors)}`)
  }
  return answer
}
