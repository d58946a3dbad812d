/** A text with its figures in one spelling: a decimal point, and no mark between thousands. */
export interface FigureText {
  readonly text: string
  /** What was taken for what, where the file writes otherwise. */
  readonly odd?: string
  /** True where a mark may part thousands or decimals, and the quantity can be either. */
  readonly twoWays?: readonly [string, string]
}

const figure = /(?<![\d.,])(?:\d{1,3}(?:[ '’\u00a0\u202f]\d{3})+(?:[.,]\d+)?|[.,]?\d[\d.,]*)/g

/**
 * Spells the figures of a text with a decimal point.
 *
 * @param decimal  the decimal sign of most figures of the file
 * @param fits     whether a figure can be the quantity at all: it tells a thousands mark from a decimal sign
 */
export function spellFigures(text: string, decimal: '.' | ',', fits: (value: number) => boolean): FigureText {
  const odd: string[] = []
  let twoWays: readonly [string, string] | undefined
  const spelled = text.replace(figure, (found) => {
    const [, body = found, tail = ''] = /^(.*?\d)([.,]*)$/.exec(found) ?? []
    const bare = body.replace(/[ '’\u00a0\u202f]/g, '')
    const other = decimal === '.' ? ',' : '.'
    if (!bare.includes(other)) return plainly(bare, decimal, fits, odd) + tail
    if (bare.includes(decimal)) return mixed(bare, tail)
    const grouped = /^[1-9]\d{0,2}(?:[.,]\d{3})+$/.test(bare)
    const [whole, parted] = [bare.replaceAll(other, ''), bare.replace(other, '.')]
    if (!grouped || bare.split(other).length > 2) {
      if (grouped) return whole + tail
      odd.push(`"${other}" read as the decimal sign`)
      return parted + tail
    }
    const [asWhole, asParted] = [fits(Number(whole)), fits(Number(parted))]
    if (asWhole === asParted && asWhole) twoWays = [parted, whole]
    odd.push(asWhole ? `"${other}" read as a mark between thousands` : `"${other}" read as the decimal sign`)
    return (asWhole ? whole : parted) + tail
  })
  return { text: spelled, ...(odd[0] !== undefined && { odd: odd[0] }), ...(twoWays && { twoWays }) }
}

/** "1,310" where the decimal sign is a comma is 1.31, unless no water has so little. */
function plainly(bare: string, decimal: '.' | ',', fits: (value: number) => boolean, odd: string[]): string {
  const parts = bare.split(decimal)
  if (parts.length > 2) return /^\d{1,3}(?:[.,]\d{3})+$/.test(bare) ? parts.join('') : bare
  const spelled = bare.replace(decimal, '.')
  const grouped = /^[1-9]\d{0,2}[.,]\d{3}$/.test(bare)
  if (grouped && !fits(Number(spelled)) && fits(Number(parts.join('')))) {
    odd.push(`"${decimal}" read as a mark between thousands`)
    return parts.join('')
  }
  return spelled
}

/** Both marks in one figure: the last one is the decimal sign. */
function mixed(bare: string, tail: string): string {
  const last = Math.max(bare.lastIndexOf('.'), bare.lastIndexOf(','))
  const whole = bare.slice(0, last).replace(/[.,]/g, '')
  return `${whole}.${bare.slice(last + 1)}${tail}`
}

/** The sign that more figures have; a point where neither has more. */
export function decimalSign(texts: Iterable<string>): '.' | ',' {
  let [commas, points] = [0, 0]
  for (const text of texts) {
    if (/(?<![\d.,])\d+,\d{1,2}(?![\d.,])|(?<![\d.,])0,\d+/.test(text)) commas++
    if (/(?<![\d.,])\d+\.\d{1,2}(?![\d.,])|(?<![\d.,])0?\.\d+/.test(text)) points++
  }
  return commas > points ? ',' : '.'
}
