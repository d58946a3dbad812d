import { z } from 'zod'
import type { OpenApi } from './document.ts'
import { route } from './route.ts'

/** The document of the list of routes that this one stands in, given when it is asked for. */
export const showDocument = (document: () => OpenApi) =>
  route({
    name: 'showDocument',
    method: 'get',
    at: '/api/openapi.json',
    says: 'This document.',
    answers: { 200: { says: 'OpenAPI 3.1.', schema: z.looseObject({ openapi: z.string() }) } },
    answer: () => ({ status: 200, body: document() }),
  })
