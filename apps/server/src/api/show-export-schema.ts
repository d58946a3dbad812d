import { exportJsonSchema } from '@holdfast/logbook/export'
import { z } from 'zod'
import { route } from './route.ts'

export const showExportSchema = route({
  name: 'showExportSchema',
  method: 'get',
  at: '/api/export.schema.json',
  says: 'The form of /api/export.json, for programs that read it.',
  answers: { 200: { says: 'JSON Schema, draft 2020-12.', schema: z.looseObject({ $schema: z.string() }) } },
  answer: () => ({ status: 200, body: exportJsonSchema() }),
})
