import type { Mended, Sheet, SheetEntries } from '@holdfast/logbook'
import { formInWords } from './form-in-words.ts'
import { notedIn } from './notes.ts'
import type { Asked, Listed, Preview } from './protocol.ts'
import { isReading, seriesOf } from './series.ts'
import type { Question, SettledSheet } from './settle.ts'

/** As many of one list as a page shows at most: a sheet may hold a million odd cells. */
const most = 1000

/** What is shown of a sheet before it is stored. */
export function previewOf(
  { sheet, questions }: SettledSheet,
  found: SheetEntries,
  context: Pick<Preview, 'systems' | 'settled' | 'isRemembered'>,
): Preview {
  const { entries, already, mended, takenBack, unplaced } = found
  return {
    fileName: sheet.fileName,
    form: formInWords(sheet),
    titles: sheet.titles,
    series: seriesOf(sheet, questions),
    columns: sheet.columns.filter(({ role }) => !isReading(role)),
    tanks: sheet.tanks,
    isUntanked: isUntanked(sheet),
    questions: questions.map(asked),
    odd: listed(sheet.odd),
    takenOdd: takenOf(sheet),
    notes: listed(sheet.notes.slice(0, most).map(notedIn), sheet.notes.length),
    mended: listed<Mended>(mended),
    fresh: counted(entries.map(({ kind }) => kind)),
    already: already.length,
    takenBack: takenBack.length,
    unplaced,
    into: [...new Set(entries.map(({ system }) => system))],
    ...context,
  }
}

const isUntanked = ({ readings, notes }: Sheet): boolean =>
  [readings, notes].some((some) => some.some(({ tank }) => tank === undefined))

/** Odd cells of which something is stored all the same, unless the keeper leaves it out. */
function takenOf({ odd, readings, notes }: Sheet): readonly string[] {
  const shown = new Set(odd.slice(0, most).map(({ cell }) => cell))
  const taken = [readings, notes].flatMap((some) => some.filter(({ cell }) => shown.has(cell)))
  return [...new Set(taken.map(({ cell }) => cell))]
}

function listed<Item>(items: readonly Item[], all = items.length): Listed<Item> {
  return { first: items.slice(0, most), all }
}

const asked = ({ cells, ...question }: Question): Asked => ({
  ...question,
  cells: { first: cells.slice(0, 4), all: cells.length },
})

function counted(names: readonly string[]): Readonly<Record<string, number>> {
  const counts: Record<string, number> = {}
  for (const name of names) counts[name] = (counts[name] ?? 0) + 1
  return counts
}
