/** Characters that nobody sees, left behind by copying. */
const UNSEEN = /\u200b|\u200c|\u200d|\u200e|\u200f|\u2060|\u00ad|\ufeff/g
/** Hyphens, dashes and minus signs of every width; the superscript minus stays, since it belongs to units. */
const DASH = /[\u2010-\u2015\u2212\ufe58\ufe63]/g

/**
 * The text with one character for what is written with several: full-width digits and signs, dashes and
 * minus signs, spaces, signs of comparison, degrees. Digits of other scripts stay and are refused later.
 *
 * @example plainText('＜０，０３ mg/L') // '<0,03 mg/L'
 * @example plainText('0.03 – 0.05') // '0.03 - 0.05'
 */
export function plainText(text: string): string {
  return text
    .replace(UNSEEN, '')
    .replace(/[\uff01-\uff5e]/g, (wide) => String.fromCharCode(wide.charCodeAt(0) - 0xfee0))
    .replace(DASH, '-')
    .replace(/[≦⩽]/g, '≤')
    .replace(/[≧⩾]/g, '≥')
    .replace(/[∼≈≃]/g, '~')
    .replace(/[’ʼ]/g, "'")
    .replace(/℃/g, '°C')
    .replace(/℉/g, '°F')
    .replace(/μ/g, 'µ')
    .replace(/\s+/g, ' ')
    .trim()
}
