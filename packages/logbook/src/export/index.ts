export { exportJsonSchema } from './document.ts'
export { type ExportFormat, exportFormats, exportLog, isExportFormat } from './formats.ts'
export { type ExportContents, type ExportRead, isExport, readExport } from './read-export.ts'
export { type TakenOver, takeOverExport } from './take-over.ts'
