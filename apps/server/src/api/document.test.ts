import { Validator } from '@seriousme/openapi-schema-validator'
import { expect, test } from 'vitest'
import { honoPath, mounted } from './mount.ts'
import { routes } from './routes.ts'
import { document } from './testing/against-document.ts'
import { writtenTypes } from './testing/written-types.ts'

test('the document is one of OpenAPI 3.1', async () => {
  // The schema of the OpenAPI Initiative (spec.openapis.org/oas/3.1), in the copy of the validator.
  const validator = new Validator()
  expect(await validator.validate(structuredClone(document))).toEqual({ valid: true })
  expect(validator.version).toBe('3.1')
  const broken = structuredClone(document)
  delete broken.info
  expect((await validator.validate(broken)).valid).toBe(false)
})

test('the document tells every route that the app answers, and no other', async () => {
  const app = mounted(routes, {} as Parameters<typeof mounted>[1])
  const answered = app.routes.map(({ method, path }) => `${method.toLowerCase()} ${path}`)
  const told = Object.entries<object>(document.paths).flatMap(([at, methods]) =>
    Object.keys(methods).map((method) => `${method} ${honoPath(at)}`),
  )
  expect([...new Set(answered)].sort()).toEqual(told.sort())
  const names = routes.map(({ name }) => name)
  expect(new Set(names).size).toBe(names.length)
})

test('what the document refers to is there', () => {
  const text = JSON.stringify(document)
  const referred = [...text.matchAll(/"\$ref":"#\/components\/(?:schemas|responses)\/([^"]+)"/g)].map(
    ([, name]) => name,
  )
  const { schemas, responses } = document.components
  const there = [schemas, responses].flatMap((part) => Object.keys(part))
  expect([...new Set(referred)].sort()).toEqual(there.sort())
  expect(text).not.toContain('#/$defs/')
})

test('the types of the client are those of the document', async () => {
  // After a change of the routes: npx vitest run apps/server/src/api/document.test.ts -u
  await expect(await writtenTypes(document)).toMatchFileSnapshot('../../../../packages/client/src/paths.ts')
})
