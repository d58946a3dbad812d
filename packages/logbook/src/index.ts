export { describedOn } from './described-on.ts'
export { anyEntry } from './entries/any-entry.ts'
export type { About, Blank, Choice, Holds, Typed } from './entries/blank.ts'
export { composeEntry, type EntryParts } from './entries/compose-entry.ts'
export { blanksOf, type Draft, draftEntry, sayEntry, typedOf } from './entries/draft-entry.ts'
export {
  type BodyOf,
  type Entry,
  type EntryKind,
  type EntryOf,
  type Envelope,
  envelope,
  type Stored,
} from './entries/entry.ts'
export { factsAt, type OwnFact } from './entries/facts-at.ts'
export type { BlankQuestion, NotUnderstood } from './entries/fill-in.ts'
export { kinds } from './entries/index.ts'
export { type JournalLine, journal } from './entries/journal.ts'
export { typedTraits } from './entries/observation.ts'
export { type Stage, stages } from './entries/outbreak.ts'
export { type EntryRead, readEntry } from './entries/read-entry.ts'
export { type ReadQuantity, readQuantities } from './entries/reading.ts'
export { rivalCorrections, standing } from './entries/standing.ts'
export { systemAt, type ZoneOn, zoneOn } from './entries/system-at.ts'
export { systemDescription } from './entries/system-description.ts'
export { exportFormatOf } from './export/recognise.ts'
export { type Issue, issueInWords, Refused } from './issue.ts'
export { lineOf } from './journal-lines.ts'
export { type JournalPage, type JournalQuestion, journalPage } from './journal-page.ts'
export { JournalSearch } from './journal-search.ts'
export type {
  Appended,
  Attachment,
  Clock,
  Kept,
  Logbook,
  Opened,
  Page,
  Sent,
  Span,
} from './logbook.ts'
export { dateOf, endOfDay, isDate, modelDay } from './model-day.ts'
export { type Moment, type MomentRead, momentAt, readMoment } from './moment.ts'
export { type LogForModel, type NotUsed, observationsAndEvents } from './observations-and-events.ts'
export { type Outbreak, outbreaksOf } from './outbreaks.ts'
export { limits as sheetLimits } from './sheet/book/book.ts'
export {
  entriesFromSheet,
  type ImportInto,
  type Mended,
  type SheetEntries,
} from './sheet/entries-from-sheet.ts'
export { readSheet } from './sheet/read-sheet.ts'
export { noteOfImport, type Remembered, rememberedFor } from './sheet/remember.ts'
export type {
  Answers,
  NoteEvent,
  OddCell,
  QuestionTopic,
  Sheet,
  SheetColumn,
  SheetNote,
  SheetQuestion,
  SheetReading,
} from './sheet/sheet.ts'
export { type SystemText, systemFileJsonSchema } from './system-file/document.ts'
export { readSystemFile, type SystemFileRead } from './system-file/read-system-file.ts'
export { type SystemLog, systemLog } from './system-log.ts'
export { type LogOfModel, SystemLogs } from './system-logs.ts'
