import type { ReadQuantity } from '../../entries/reading.ts'
import { meanings } from './plain.ts'

/** What a column can be besides a quantity. */
export type Role =
  | 'date'
  | 'day'
  | 'time'
  | 'note'
  | 'parameter'
  | 'value'
  | 'unit'
  | 'tank'
  | 'kit'
  | 'water change'
  | 'month'
  | 'year'

/**
 * Words of headers, small and without accents: English, German, French, Spanish, Italian, Dutch. A word of
 * another language is one more word here.
 */
const roles: Readonly<Record<Role, string>> = {
  date: 'date dates datum fecha data when wann quand quando giorno datetime timestamp zeitpunkt measured gemessen',
  day: 'day tag jour dia dag',
  month: 'month monat mois mes mese maand',
  year: 'year jahr annee ano anno jaar',
  time: 'time uhrzeit zeit heure hora tijd ora orario clock uhr moment tageszeit am/pm',
  note:
    'note notes comment comments remark remarks notiz notizen bemerkung bemerkungen kommentar kommentare ' +
    'anmerkung anmerkungen remarque remarques commentaire commentaires nota notas comentario comentarios ' +
    'observacion observaciones observation observations opmerking opmerkingen note/remarks osservazioni ' +
    'commenti commento did done getan gemacht fait hecho fatto gedaan opmerk bijzonderheden actions action events event ereignis ereignisse maintenance wartung entretien ' +
    'mantenimiento manutenzione onderhoud sonstiges other autre otros altro overig info diary',
  parameter:
    'parameter parameters what test quantity measurement messgroesse messgrosse parametre parametro ' +
    'wasserwert meting medicion misura mesure analyte was quoi que cosa wat grootheid',
  value:
    'value values result results reading wert ergebnis messwert valeur resultat valor resultado valore risultato waarde uitslag',
  unit: 'unit units einheit einheiten unite unites unidad unidades eenheid eenheden unita',
  tank: 'tank aquarium becken bac acuario acquario aquarien system systeme vasca bak cuve acuarios',
  kit: 'kit method methode metodo testkit instrument gerat geraet device probe meter photometer',
  'water change': 'wc ww wasserwechsel teilwasserwechsel waterverversing waterwissel waterwechsel',
}

/** Water changes in several words. */
export const waterChangePhrase =
  /\b(?:water ?change[sd]?|changed? (?:of )?water|volume changed|changed volume|changements? d(?:e l)?'eau|renouvellement d'eau|(?:re)?cambi(?:o|os) (?:de |d'|dell')?(?:agua|acqua)|ricambio (?:d')?acqua|water ?ver?versing|water ?ververst|verversing|waterwissel|(?:teil)?wasser ?wechsel|twc|pwc|tww|wc|ww)\b/

/** Names of what is measured; those of formulas say their form too. */
const quantityNames: Readonly<Record<ReadQuantity | 'specific gravity', string>> = {
  nitrate: 'nitrate nitrates nitrat nitrato nitratos nitrati nitraat nitraten no3',
  nitrite: 'nitrite nitrites nitrit nitrito nitritos nitriti nitriet no2',
  phosphate:
    'phosphate phosphates phosphat fosfato fosfatos fosfati fosfaat fosfaten po4 p phosphorus phosphor phosphore ' +
    'fosforo fosfor',
  ammonia:
    'ammonia ammonium ammoniak ammoniac ammoniaque amonio amoniaco ammonio ammoniaca nh3 nh4 nh3/nh4 nh4/nh3 tan',
  alkalinity:
    'alkalinity alk kh dkh karbonatharte karbonathaerte carbonatharte alkalinitat alkalitat alcalinite alcalinidad ' +
    'alcalinita alkaliniteit carbonaathardheid kh-wert tac karbonat carbonate carbonatica carbonatee carbonatos',
  calcium: 'calcium ca kalzium calcio',
  magnesium: 'magnesium mg magnesio',
  salinity:
    'salinity sal salinitat salinite salinidad salinita saliniteit salzgehalt zoutgehalte saltness psu salz',
  temperature: 'temperature temp temp. temperatur temperatura temperatuur t°',
  pH: 'ph ph-wert',
  'specific gravity': 'sg s.g. s.g gravity density dichte densite densidad densita dichtheid',
}

/** Quantities that have a name here and no place in the log; their cells are listed, not taken for words. */
export const otherQuantities = new Set(
  (
    'iodine iodide jod iode yodo iodio jodium strontium sr potassium kalium k silicate silikat silicato silicaat si sio2 ' +
    'iron eisen fer hierro ferro ijzer fe boron bor bore boro copper kupfer cuivre cobre rame koper cu ' +
    'redox orp rx oxygen sauerstoff oxygene oxigeno ossigeno zuurstof o2 gh tds ' +
    'par lux co2 bromide bromid fluoride fluorid kalium. urea toc doc'
  ).split(' '),
)

export const roleOfWord = meanings(roles)
export const quantityOfWord = meanings(quantityNames)
