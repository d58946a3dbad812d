import { unpack } from './archive.ts'
import { type Grid, limits, tooLarge, Unreadable } from './book.ts'
import { showsDate } from './number-format.ts'
import { Room, worksheetGrid } from './worksheet.ts'
import { listenTo } from './xml.ts'

/** What the cells of all sheets refer to. */
export interface Shared {
  readonly texts: readonly string[]
  /** By the number of its style: whether a cell shows a date. */
  readonly dateStyles: readonly boolean[]
  readonly dateSystem: 1900 | 1904
}

/** The sheets of a workbook (XLSX) in their order. @throws Unreadable */
export function workbookGrids(bytes: Uint8Array): readonly Grid[] {
  const parts = unpack(
    bytes,
    (path) => /^\/?xl\/.*\.(?:xml|rels)$/i.test(path) && !/theme|drawing/i.test(path),
  )
  const part = (path: string): Uint8Array | undefined => parts.get(path) ?? parts.get(`/${path}`)
  const contents = part('xl/workbook.xml')
  if (contents === undefined)
    throw new Unreadable({ code: 'not-text', looksLike: 'an archive (ZIP) and no workbook' })
  const { sheets, dateSystem } = readContents(contents)
  if (sheets.length > limits.sheets) throw tooLarge('sheets', limits.sheets)
  const targets = readTargets(part('xl/_rels/workbook.xml.rels'))
  const shared: Shared = {
    texts: readTexts(part('xl/sharedStrings.xml')),
    dateStyles: readDateStyles(part('xl/styles.xml')),
    dateSystem,
  }
  const room = new Room()
  const names = new Set<string>()
  return sheets.flatMap(({ name: written, id }) => {
    const name = unlike(written, names)
    const target = targets.get(id)
    const sheet = target === undefined ? undefined : part(target)
    return sheet === undefined ? [] : [worksheetGrid(sheet, name, shared, room)]
  })
}

/** Two sheets of one name, which no spreadsheet program writes, are told apart. */
function unlike(name: string, taken: Set<string>): string {
  let unique = name
  for (let count = 2; taken.has(unique); count++) unique = `${name} (${count})`
  taken.add(unique)
  return unique
}

function readContents(bytes: Uint8Array): {
  readonly sheets: readonly { readonly name: string; readonly id: string }[]
  readonly dateSystem: 1900 | 1904
} {
  const sheets: { name: string; id: string }[] = []
  let dateSystem: 1900 | 1904 = 1900
  listenTo(bytes, 'xl/workbook.xml', {
    open: (name, attributes) => {
      if (name === 'workbookPr' && /^(?:1|true)$/.test(attributes.date1904 ?? '')) dateSystem = 1904
      if (name !== 'sheet') return
      const [, id] = Object.entries(attributes).find(([key]) => /^(?:\w+:)id$/.test(key)) ?? []
      sheets.push({ name: attributes.name ?? '', id: id ?? '' })
    },
  })
  return { sheets, dateSystem }
}

/** The path of each part by its id, as the workbook names its sheets. */
function readTargets(bytes: Uint8Array | undefined): ReadonlyMap<string, string> {
  const targets = new Map<string, string>()
  if (bytes === undefined) return targets
  listenTo(bytes, 'xl/_rels/workbook.xml.rels', {
    open: (name, { Id, Target = '', TargetMode }) => {
      // what lies outside the file is not fetched
      if (name !== 'Relationship' || Id === undefined || TargetMode === 'External') return
      targets.set(Id, Target.startsWith('/') ? Target.slice(1) : `xl/${Target}`)
    },
  })
  return targets
}

function readTexts(bytes: Uint8Array | undefined): readonly string[] {
  const texts: string[] = []
  if (bytes === undefined) return texts
  let [within, phonetic, text] = [false, false, '']
  listenTo(bytes, 'xl/sharedStrings.xml', {
    open: (name) => {
      if (name === 'si') text = ''
      if (name === 't') within = true
      if (name === 'rPh') phonetic = true
    },
    close: (name) => {
      if (name === 'si') texts.push(text)
      if (name === 't') within = false
      if (name === 'rPh') phonetic = false
    },
    text: (more) => {
      if (within && !phonetic) text += more
    },
  })
  return texts
}

function readDateStyles(bytes: Uint8Array | undefined): readonly boolean[] {
  const styles: boolean[] = []
  if (bytes === undefined) return styles
  const codes = new Map<number, string>()
  let within = false
  listenTo(bytes, 'xl/styles.xml', {
    open: (name, attributes) => {
      if (name === 'numFmt') codes.set(Number(attributes.numFmtId), attributes.formatCode ?? '')
      if (name === 'cellXfs') within = true
      if (name !== 'xf' || !within) return
      const id = Number(attributes.numFmtId ?? 0)
      styles.push(showsDate(id, codes.get(id)))
    },
    close: (name) => {
      if (name === 'cellXfs') within = false
    },
  })
  return styles
}
