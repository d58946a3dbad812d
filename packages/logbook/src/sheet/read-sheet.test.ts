import fc from 'fast-check'
import { expect, test } from 'vitest'

import { readSheet } from './read-sheet.ts'
import type { Answers, Sheet } from './sheet.ts'

const read = (text: string, answers: Answers = {}): Sheet =>
  readSheet(new TextEncoder().encode(text), 'log.csv', answers)
const codes = ({ issues }: Sheet): string[] => issues.map(({ code }) => code)
const values = ({ readings }: Sheet): unknown[] => readings.map(({ quantity, value }) => [quantity, value])
const asked = ({ questions }: Sheet): unknown[] => questions.map(({ id, waiting }) => [id, waiting])

test('an empty file, blank lines, a picture and bytes of nothing are refused by name', () => {
  expect(codes(read(''))).toEqual(['empty-file'])
  expect(codes(read('\n \n'))).toEqual(['empty-file'])
  const png = Uint8Array.of(0x89, 0x50, 0x4e, 0x47, 0x0d, 0x0a, 0x1a, 0x0a, 0, 0, 0, 13)
  const [issue] = readSheet(png, 'tank.png').issues
  expect(issue).toMatchObject({
    code: 'not-text',
    where: 'Sheet "tank.png"',
    got: 'the file is a PNG picture',
  })
  expect(codes(readSheet(Uint8Array.of(1, 2, 3, 0, 255, 7), 'x.bin'))).toEqual(['not-text'])
})

test('a header without rows, one column and no header are refused by name', () => {
  expect(codes(read('Date,NO3 (mg/L)\n'))).toEqual(['no-rows'])
  expect(codes(read('Date\n2026-01-04\n'))).toEqual(['no-columns'])
  expect(codes(read('a,b\n1,2\n'))).toEqual(['no-header'])
})

test('no bytes whatever make the import fail without a word', () => {
  fc.assert(
    fc.property(fc.uint8Array({ maxLength: 200 }), (bytes) => {
      const { issues, readings } = readSheet(bytes, 'any')
      return issues.length > 0 || readings.length >= 0
    }),
  )
})

test('nitrate without a form is asked and not stored until it is answered', () => {
  const text = 'Date,Nitrate (mg/L)\n2026-01-04,1\n2026-01-11,2\n'
  expect(read(text).readings).toEqual([])
  expect(asked(read(text))).toEqual([['nitrate-form:B', 2]])
  expect(values(read(text, { 'nitrate-form:B': 'NO3' }))).toEqual([
    ['nitrate', 1],
    ['nitrate', 2],
  ])
  // 1 mg/L of nitrate nitrogen is 4.427 mg/L of nitrate (molar masses).
  expect(read(text, { 'nitrate-form:B': 'N' }).readings[0].value).toBeCloseTo(4.427, 3)
})

test('each column of missing form, unit or reference is asked by itself', () => {
  const sheet = read('Date,Phosphate,Alk,SG,Temp\n2026-01-04,0.1,8,1.026,26\n')
  expect(asked(sheet)).toEqual([
    ['unit:B', 1],
    ['phosphate-form:B', 1],
    ['unit:C', 1],
    ['sg-reference:D', 1],
  ])
  // no sea water that holds life is at 26 °F
  expect(values(sheet)).toEqual([['temperature', 26]])
})

test('a unit over several columns is that of each whose header says none and that can be measured in it', () => {
  const rows = '2026-01-04,6,0.05,7.9,26\n'
  const sheet = read(`,Nutrients (mg/L),,Rest (mg/L),\nDate,NO3,PO4,KH (dKH),Temp (°C)\n${rows}`)
  expect(asked(sheet)).toEqual([])
  expect(values(sheet)).toEqual([
    ['nitrate', 6],
    ['phosphate', 0.05],
    ['alkalinity', expect.closeTo(2.82, 2)],
    ['temperature', 26],
  ])
  const other = read(`,Nutrients (°C),\nDate,NO3,PO4\n2026-01-04,6,0.05\n`)
  expect(asked(other).map((one) => (one as readonly unknown[])[0])).toEqual(['unit:B', 'unit:C'])
})

test('alkalinity comes out the same in each of its units', () => {
  const sheet = read('Date,Alk (dKH),Alkalinity (meq/L),Alkalinity (ppm CaCO3)\n2026-01-04,2.804,1,50.04\n')
  for (const { value } of sheet.readings) expect(value).toBeCloseTo(1, 3)
  expect(sheet.readings).toHaveLength(3)
})

test('dates that read both ways are asked, and one day above 12 answers for the column', () => {
  const open = 'Date,NO3 (mg/L)\n3/4/26,5\n4/5/26,6\n'
  expect(read(open).readings).toEqual([])
  expect(asked(read(open))).toEqual([['date-order:A', 2]])
  expect(read(open, { 'date-order:A': 'day first' }).readings.map(({ date }) => date)).toEqual([
    '2026-04-03',
    '2026-05-04',
  ])
  expect(read(open, { 'date-order:A': 'month first' }).readings[0].date).toBe('2026-03-04')
  expect(read(`${open}13/6/26,7\n`).readings.map(({ date }) => date)).toEqual([
    '2026-04-03',
    '2026-05-04',
    '2026-06-13',
  ])
})

test('the limit of "not detected" is asked; the reading is kept without one, or with the answer', () => {
  const text = 'Date,PO4 (ppb)\n2026-01-04,n.n.\n2026-01-11,0\n2026-01-18,<30\n'
  expect(read(text).readings.map(({ value, belowDetection }) => [value, belowDetection])).toEqual([
    [null, true],
    [0, true],
    [0.03, true],
  ])
  expect(asked(read(text))).toEqual([['limit:B', 0]])
  expect(read(text, { 'limit:B': '20' }).readings.map(({ value }) => value)).toEqual([0.02, 0.02, 0.03])
})

test('a dot is a thousands mark only where the quantity can be so much and the file writes commas', () => {
  const sheet = read('Datum;Magnesium (mg/l);NO3 (mg/l)\n01.02.2026;1.310;12,5\n08.02.2026;1290;2,5\n')
  expect(values(sheet)).toEqual([
    ['magnesium', 1310],
    ['nitrate', 12.5],
    ['magnesium', 1290],
    ['nitrate', 2.5],
  ])
  expect(sheet.odd).toMatchObject([{ cell: 'B2', taken: 'read as 1310' }])
})

test('a range, an end of scale and an estimate keep what they are', () => {
  const [range, above, about] = read(
    'Date,NO3 (mg/L)\n2026-01-04,5-10\n2026-01-05,>50\n2026-01-06,~20\n',
  ).readings
  expect(range).toMatchObject({ value: 7.5, interval: [5, 10] })
  expect(above).toMatchObject({ value: 50, aboveRange: true })
  expect(about).toMatchObject({ value: 20, approximate: true })
})

test('nothing is dropped in silence: unknown columns, wrong dates and words are listed', () => {
  const sheet = read('Date,NO3 (mg/L),Mood\n2026-02-30,5,\n,6,\n2026-03-01,twelve,good\n2026-03-02,5,\n')
  expect(sheet.odd.map(({ cell }) => cell).sort()).toEqual(['A2', 'B2', 'B3', 'B4'])
  expect(values(sheet)).toEqual([['nitrate', 5]])
  expect(sheet.notes.map(({ text }) => text)).toEqual(['Mood: good'])
})

test('a figure that sea water cannot have is taken as written and pointed out', () => {
  const sheet = read('Date,pH,Ca (mg/L)\n2026-03-01,82,42\n')
  expect(values(sheet)).toEqual([
    ['pH', 82],
    ['calcium', 42],
  ])
  expect(sheet.odd.map(({ cell }) => cell)).toEqual(['B2', 'C2'])
})

test('gallons are asked, litres are taken, and the note is kept whole', () => {
  const text =
    'Date,NO3 (mg/L),Notes\n2026-03-01,5,10 gal water change\n2026-03-02,5,"WW 50 l, Pumpe sauber"\n'
  expect(read(text).notes.map(({ events }) => events)).toEqual([[], [{ kind: 'water-change', volume_L: 50 }]])
  expect(asked(read(text))).toEqual([['gallon:notes', 1]])
  const [note] = read(text, { 'gallon:notes': 'US (3.785 L)' }).notes
  expect(note).toMatchObject({
    text: '10 gal water change',
    events: [{ volume_L: expect.closeTo(37.8541, 4) }],
  })
})

test('encodings are told by mark, by strictness, by zero bytes, and shown', () => {
  const text = 'Date,Temp (°C)\n2026-03-01,25.5\n'
  const utf16 = Uint8Array.from([...text].flatMap((one) => [one.charCodeAt(0), 0]))
  const latin1 = Uint8Array.from(text, (one) => one.charCodeAt(0))
  const marked = new TextEncoder().encode(`\ufeff${text}`)
  const sheets = [new TextEncoder().encode(text), marked, utf16, latin1].map((bytes) =>
    readSheet(bytes, 'x.csv'),
  )
  expect(sheets.map(({ encoding }) => encoding)).toEqual([
    'UTF-8',
    'UTF-8 with BOM',
    'UTF-16 LE',
    'windows-1252',
  ])
  for (const sheet of sheets) expect(values(sheet)).toEqual([['temperature', 25.5]])
})

test('the same file says the same under every zone, and no clock turns a day', () => {
  const zone = process.env.TZ
  const text =
    'Date,Time,NO3 (mg/L),Notes\n2026-03-29,02:30,5,the hour that is not\n2026-10-25,02:30,6,\n' +
    '2026-12-31,23:59,6,\n2027-01-01,00:00,7,midnight\n3/4/26,,8,\n'
  const sheets = ['Pacific/Auckland', 'America/Los_Angeles', 'UTC'].map((TZ) => {
    process.env.TZ = TZ
    return read(text)
  })
  if (zone === undefined) delete process.env.TZ
  else process.env.TZ = zone
  expect(sheets[1]).toEqual(sheets[0])
  expect(sheets[2]).toEqual(sheets[0])
  expect(sheets[0]?.readings.map(({ date, time }) => `${date} ${time}`)).toEqual([
    '2026-03-29 02:30',
    '2026-10-25 02:30',
    '2026-12-31 23:59',
    '2027-01-01 00:00',
  ])
  expect(asked(read(text))).toEqual([['date-order:A', 1]])
})

test('rows below one date that covers them are no copies of each other', () => {
  const rows = ['2026-03-01,am,5,8,25', ',pm,6,8,25', '2026-03-08,am,5,8,25', ',pm,6,8,25']
  const sheet = read(`Date,Time,NO3 (mg/L),KH (dKH),Temp (°C)\n${rows.join('\n')}\n`)
  expect(sheet.readings).toHaveLength(12)
  expect(sheet.readings.filter(({ half }) => half === 'pm').map(({ date }) => date)[3]).toBe('2026-03-08')
})

test('a row that is there twice with all its figures is imported once, and two coarse figures stay', () => {
  const header = 'Date,NO3 (mg/L),PO4 (mg/L),KH (dKH)\n'
  const copied = read(`${header}2026-03-01,5,0.05,8\n2026-03-01,5,0.05,8\n`)
  expect([copied.readings.length, copied.cells.listed]).toEqual([3, 4])
  const twice = read('Date,NO3 (mg/L),PO4 (mg/L)\n2026-03-01,5,0.05\n2026-03-01,5,0.05\n')
  expect([twice.readings.length, twice.cells.listed, twice.odd.length]).toEqual([4, 0, 3])
})

test('readings in another form for a while wait for the keeper, and count as written or turned', () => {
  const figures = [10.7, 10.6, 10.9, 10.5, 2.5, 2.4, 2.5, 10.4, 10.6, 10.3]
  const rows = figures.map((figure, at) => `2026-03-${String(at + 1).padStart(2, '0')},${figure}`)
  const text = `Date,NO3 (mg/L)\n${rows.join('\n')}\n`
  const open = read(text)
  expect(asked(open)).toEqual([['unit-slip:B6:B8', 3]])
  expect([open.readings.length, open.cells.waiting]).toEqual([7, 3])
  const turned = read(text, { 'unit-slip:B6:B8': 'as N' }).readings[4]
  expect(turned).toMatchObject({ value: expect.closeTo(11.07, 2), valueAsWritten: 2.5, suspect: true })
  expect(read(text, { 'unit-slip:B6:B8': 'as NO3, as written' }).readings[4]?.value).toBe(2.5)
})

test('a new kit marks the readings and is asked about where they step', () => {
  const rows = [20, 20, 20, 20, 10, 10, 10].map(
    (figure, at) => `2026-03-0${at + 1},${figure},${at === 4 ? 'new NO3 kit' : ''}`,
  )
  const sheet = read(`Date,NO3 (mg/L),Notes\n${rows.join('\n')}\n`)
  expect(sheet.questions).toMatchObject([{ topic: 'kit-change', waiting: 0, written: ['10', '10', '10'] }])
  expect(new Set(sheet.readings.map(({ kit }) => kit))).toEqual(
    new Set(['kit before 2026-03-05', 'kit from 2026-03-05']),
  )
  const id = sheet.questions[0]?.id ?? ''
  const trusted = read(`Date,NO3 (mg/L),Notes\n${rows.join('\n')}\n`, { [id]: 'new kit' })
  expect(trusted.readings.map(({ approximate }) => approximate === true)).toEqual([
    true,
    true,
    true,
    true,
    false,
    false,
    false,
  ])
})

test('a sheet of more cells than a log can take is refused early, with the limit and what to do', () => {
  const row = `2020-01-01,${'1,'.repeat(1998)}1\n`
  const { issues, readings } = readSheet(new TextEncoder().encode(row.repeat(1001)), 'probe.csv')
  expect(readings).toEqual([])
  expect(issues).toMatchObject([
    {
      code: 'too-large',
      got: 'it has too many cells with something in them (the most is 2,000,000)',
      next: 'Save each year, or the part with the readings, as a file of its own. Nothing is stored.',
    },
  ])
})

test('days of the week settle the order of dates whose year stands in a title', () => {
  const text = 'Tank log 2026\n\nDate,KH (dKH)\nMon 02/02,8\nMon 09/02,8.1\nMon 16/02,8\n'
  const { readings, questions } = readSheet(new TextEncoder().encode(text), 'log.csv')
  expect(questions).toEqual([])
  expect(readings.map(({ date }) => date)).toEqual(['2026-02-02', '2026-02-09', '2026-02-16'])
})

test('a figure with a unit that we do not know is listed, and not read in the unit of its column', () => {
  const text = 'Date,Ca (mg/L)\n2026-02-01,420\n2026-02-08,0.42 oz/gal\n2026-02-15,415\n'
  const { readings, odd } = readSheet(new TextEncoder().encode(text), 'log.csv')
  expect(readings.map(({ value }) => value)).toEqual([420, 415])
  expect(odd).toMatchObject([{ cell: 'B3', taken: 'left out' }])
})
