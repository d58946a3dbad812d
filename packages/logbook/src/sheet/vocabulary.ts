import type { ReadQuantity } from '../entries/reading.ts'

/** Words of headers, small and without accents: English, German, French, Spanish, Dutch, Italian. */
const roleWords = {
  date: 'date datum fecha data when jour tag dag dia giorno',
  time: 'time uhrzeit zeit heure hora tijd ora',
  note:
    'note notes comment comments remark remarks notiz notizen bemerkung bemerkungen kommentar kommentare ' +
    'anmerkung remarque remarques commentaire nota notas comentario comentarios opmerking opmerkingen',
  parameter: 'parameter what test quantity messgroesse messgrosse parametre parametro',
  value: 'value result reading wert ergebnis messwert valeur resultat valor waarde valore',
  unit: 'unit units einheit unite unidad eenheid unita',
} as const

const quantityWords: Readonly<Record<ReadQuantity | 'specific gravity', string>> = {
  nitrate: 'nitrate nitrates nitrat nitrato nitratos nitraat no3 no3-n nitrate-n nitrat-n',
  nitrite: 'nitrite nitrites nitrit nitrito nitritos nitriet no2 no2-n nitrite-n',
  phosphate:
    'phosphate phosphates phosphat fosfato fosfatos fosfaat po4 po4-p phosphate-p phosphorus phosphor p',
  ammonia: 'ammonia ammonium ammoniak ammoniac ammoniaque amonio amoniaco nh3 nh4 nh3-n nh4-n tan',
  alkalinity: 'alkalinity alk kh dkh karbonatharte karbonathaerte alkalinitat alcalinite alcalinidad',
  calcium: 'calcium ca kalzium calcio',
  magnesium: 'magnesium mg magnesio',
  salinity: 'salinity sal salinitat salinite salinidad saliniteit salzgehalt psu',
  temperature: 'temperature temp temperatur temperatura temperatuur',
  pH: 'ph',
  'specific gravity': 'sg s.g. gravity density dichte densite densidad dichtheid',
}

const unitWords: Readonly<Record<string, string>> = {
  'mg/L': 'mg/l ppm mgl',
  'µg/L': 'ug/l µg/l ppb',
  'µmol/L': 'umol/l µmol/l',
  'meq/L': 'meq/l',
  'mmol/L': 'mmol/l',
  dKH: 'dkh °dkh °d °kh',
  psu: 'psu',
  'g/kg': 'g/kg',
  ppt: 'ppt ‰ g/l',
  '°C': 'c °c celsius degc',
  '°F': 'f °f fahrenheit degf',
}

const formWords: Readonly<Record<string, string>> = {
  NO3: 'no3 no3-',
  NO2: 'no2 no2-',
  PO4: 'po4 po4---',
  N: 'n no3-n no2-n nitrate-n nitrat-n nitrite-n nh3-n nh4-n tan',
  P: 'p po4-p phosphate-p phosphorus phosphor',
  NH3: 'nh3',
  NH4: 'nh4 nh4+',
  CaCO3: 'caco3',
}

const listOf = <Key extends string>(words: Readonly<Record<Key, string>>): ReadonlyMap<string, Key> =>
  new Map(
    (Object.entries(words) as [Key, string][]).flatMap(([key, list]) =>
      list.split(' ').map((word) => [word, key] as const),
    ),
  )

/** The role that a word gives a column, if any. */
export const roleOfWord = listOf(roleWords)

/** The quantity that a word names, if any; specific gravity is a way to read salinity. */
export const quantityOfWord = listOf(quantityWords)

/** The unit that a word is, if any. */
export const unitOfWord = listOf(unitWords)

/** The form (ion, nitrogen, phosphorus) that a word says, if any. */
export const formOfWord = listOf(formWords)
