import { plain } from './plain.ts'

const words =
  'mean average avg total totals sum summe gesamt durchschnitt schnitt mittelwert mittel moyenne moy somme totaux ' +
  'promedio media suma totale totali somma medio gemiddelde gemiddeld som totaal min max minimum maximum minimo ' +
  'massimo maximo median mediane mediana mediaan std stdev stdabw sd deviation standardabweichung spread range ' +
  'trend count anzahl nombre numero aantal n target ziel soll sollwert objectif objetivo obiettivo streefwaarde goal'

const summaries = new Set(words.split(' '))

/** Whether the label of a row or a column says that its figures are reckoned or wished, not read. */
export function isSummary(label: string): boolean {
  const [first = '', second = ''] = plain(label)
    .replaceAll(/[^\p{L}\s.]/gu, ' ')
    .trim()
    .split(/[\s.]+/)
  return (
    summaries.has(first) ||
    (/^(?:monthly|monats|weekly|overall|grand|ecart|valor|valore|valeur)/.test(first) &&
      summaries.has(second)) ||
    /^(?:monatsmittel|jahresmittel|monatsdurchschnitt|gesamtmenge|maandgemiddelde)$/.test(first)
  )
}
