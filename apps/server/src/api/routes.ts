import { addEntries } from './add-entries.ts'
import { describeSystem } from './describe-system.ts'
import { openApiDocument } from './document.ts'
import { exportLogAs } from './export-log.ts'
import { getAttachment } from './get-attachment.ts'
import { health } from './health.ts'
import { listEntries } from './list-entries.ts'
import { listReceived } from './list-received.ts'
import { listSystems } from './list-systems.ts'
import { putAttachment } from './put-attachment.ts'
import type { Route } from './route.ts'
import { showDocument } from './show-document.ts'
import { showEntry } from './show-entry.ts'
import { showExportSchema } from './show-export-schema.ts'
import { showSystem } from './show-system.ts'
import { takeOverExport } from './take-over-export.ts'

/** Every route of the API, one line each. */
export const routes: readonly Route[] = [
  health,
  listSystems,
  showSystem,
  describeSystem,
  listEntries,
  listReceived,
  showEntry,
  addEntries,
  putAttachment,
  getAttachment,
  exportLogAs('json'),
  exportLogAs('csv'),
  exportLogAs('xlsx'),
  takeOverExport,
  showExportSchema,
  showDocument(() => openApiDocument(routes)),
]
