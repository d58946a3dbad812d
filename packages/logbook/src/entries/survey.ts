import { asTyped, kind, share } from './kind.ts'
import { z } from './schema.ts'

/** Share of a surface that a kind of algae covers. */
export const survey = kind({
  name: 'survey',
  title: 'Survey of a surface',
  v: 1,
  body: { surface: z.string().min(1), algae: z.string().min(1), cover: share, text: asTyped },
})
