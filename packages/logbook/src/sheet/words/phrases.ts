import { plain } from './plain.ts'

const nothing =
  /^(?:-+|\/+|n\.?\/?\s?a\.?|nan|null|x|\.+|\?+|_+|leer|empty|k\.?\s?a\.?|s\/d|sin dato|nm|n\.?m\.?|not (?:tested|measured|taken|done)|nicht (?:gemessen|getestet)|no test|kein test|skipped|ausgelassen|pas (?:mesure|teste)|non (?:mesure|misurato|testato)|no medido|niet gemeten|vergeten|forgot|vergessen|oublie|olvidado)$/

const notDetected =
  /^(?:n\.?\s?d\.?|n\.?\s?n\.?|u\.?d\.?|b\.?d\.?l\.?|nwg|n\.?\s?nachweisbar|not detect(?:ed|able)|undetect(?:ed|able)|none detected|non[- ]?detect(?:ed|able)?|below (?:detection|limit|range)(?: limit)?|under range|unter (?:nachweis(?:grenze)?|nwg)|nicht nachweisbar|nicht messbar|indetectable|non detect(?:e|able)|non decele|pas detecte|no detect(?:ado|able)|indetectado|non rilev(?:ato|abile)|niet (?:aantoonbaar|meetbaar|detecteerbaar)|none|nil|absente?|assent[ei]|ausentes?|keine?|aucun|nessun[oa]?|geen|zero detected|lo|low range|<\s?lo[dq])(?![\p{L}\d])/u

const trace = /^(?:traces?|spuren?|tracce|trazas?|sporen|tr\.?)(?![p{L}\d])/

const about =
  /^(?:(?:a (?:bit|little) (?:over|above|under|below|more than|less than)|(?:just|slightly|a touch) (?:over|above|under|below)|etwas (?:uber|unter|mehr als|weniger als)|knapp (?:uber|unter)?|gut|un peu (?:plus|moins) (?:de|que)|(?:poco|un poco) (?:mas|menos) de|un po' (?:piu|meno) di|poco (?:piu|meno) di|iets (?:boven|onder|meer dan|minder dan)|about|around|roughly|approx\.?|approximately|almost|nearly|circa|ca\.?|c\.|etwa|ungefahr|rund|environ|env\.?|vers|presque|unos|unas|aprox\.?|aproximadamente|alrededor de|cerca de|ongeveer|rond|bijna|~|=~|\+\/-|±)\s*)+(?=[\d.,<>])/

const between =
  /^(?:between|zwischen|entre|tra|fra|tussen|from|von|de|da|van)\s+([\d.,]+)\s*(?:and|und|et|y|e|en|to|bis|a|tot|-)\s*([\d.,]+)/

const span = /^([\d.,]+)\s*(?:to|bis|a|tot|hasta|fino a|or|oder|ou|o|of)\s+([\d.,]+)(?![\d.,])/

const somehow = /^([\d.,]+)\s*-?(?:ish|oder so|or so|ou environ)(?![\p{L}\d])/u

const above =
  /^(?:over|above|more than|greater than|uber|mehr als|grosser als|plus de|superieur a|mas de|mayor que|oltre|piu di|meer dan|boven|groter dan|>>|high|hi)\s*(?=[\d.,])/
const below =
  /^(?:under|below|less than|lower than|unter|weniger als|kleiner als|moins de|inferieur a|menos de|menor que|meno di|sotto|minder dan|onder|kleiner dan|<<)\s*(?=[\d.,])/

/** A cell in the words of a keeper, made into marks that every figure is read from. */
export interface Phrase {
  readonly is: 'nothing' | 'not detected' | 'trace' | 'figure'
  readonly text: string
}

/** @example readPhrase('zwischen 10 und 20 ppm') // { is: 'figure', text: '10-20 ppm' } */
export function readPhrase(written: string): Phrase {
  const said = plain(written)
  if (nothing.test(said)) return { is: 'nothing', text: '' }
  if (notDetected.test(said)) return { is: 'not detected', text: said.replace(notDetected, '').trim() }
  if (trace.test(said)) return { is: 'trace', text: said.replace(trace, '').trim() }
  // an accent or a capital after the figure may matter, so only what was replaced is plain
  const text = written.trim().replace(/^'/, '')
  const swapped = (rule: RegExp, mark: string): string | undefined =>
    rule.test(said) ? said.replace(rule, mark) : undefined
  const figure =
    swapped(between, '$1-$2') ??
    swapped(about, '~') ??
    swapped(somehow, '~$1') ??
    swapped(span, '$1-$2') ??
    swapped(above, '>') ??
    swapped(below, '<') ??
    text
  return { is: 'figure', text: figure }
}

const numbers: readonly string[] = [
  'zero null zero cero zero nul',
  'one eins un uno een',
  'two zwei deux dos due twee',
  'three drei trois tres tre drie',
  'four vier quatre cuatro quattro',
  'five funf cinq cinco cinque vijf',
  'six sechs seis sei zes',
  'seven sieben sept siete sette zeven',
  'eight acht huit ocho otto',
  'nine neun neuf nueve nove negen',
  'ten zehn dix diez dieci tien',
  'eleven elf onze once undici',
  'twelve zwolf douze doce dodici twaalf',
  'thirteen dreizehn treize trece tredici dertien',
  'fourteen vierzehn quatorze catorce quattordici veertien',
  'fifteen funfzehn quinze quince quindici vijftien',
  'sixteen sechzehn seize dieciseis sedici zestien',
  'seventeen siebzehn dix-sept diecisiete diciassette zeventien',
  'eighteen achtzehn dix-huit dieciocho diciotto achttien',
  'nineteen neunzehn dix-neuf diecinueve diciannove negentien',
  'twenty zwanzig vingt veinte venti twintig',
]
const byWord = new Map(
  numbers.flatMap((words, value) => words.split(' ').map((word) => [word, value] as const)),
)

/** A whole number up to twenty written as a word. */
export const numberInWord = (written: string): number | undefined => byWord.get(plain(written))
