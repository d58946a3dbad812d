import type { Asked, Option } from './issue.ts'
import { decimalMark, type Figure, type NumberStyle, readFigure } from './number-text.ts'
import { question } from './words.ts'

interface Place {
  readonly where: string
  readonly got: string
  /** The unit and form, to be set behind each answer. */
  readonly written: string
}

/**
 * A question where the figure itself has two meanings: a comma before three digits, or a trace, which may be
 * below the first step of a chart.
 */
export function whichFigure(
  { doubt, figure }: Figure,
  { where, got, written }: Place,
  told: NumberStyle & { readonly step?: number },
): Asked | undefined {
  if (doubt === undefined) return undefined
  const code = doubt === 'comma' ? 'which-comma' : 'what-trace'
  const step = String(told.step ?? '').replace('.', decimalMark(told) ?? '.')
  const mark = step === '' || written === '' ? undefined : step
  const meanings = doubt === 'comma' ? commas(figure) : traces(mark)
  const options = meanings.map(({ answer, means }) => ({ answer: `${answer} ${written}`.trim(), means }))
  return { ok: false, ask: { code, where, got, question: question(code, where, got), options } }
}

function commas(figure: string): readonly Option[] {
  const point = figure.replaceAll(',', '.')
  const whole = figure.replace(/,(?=\d{3}(?!\d))/g, '').replaceAll(',', '.')
  const meanings = [
    { answer: point, means: `the comma is the decimal mark: ${point}` },
    { answer: whole, means: `the comma parts thousands: ${whole}` },
  ]
  // one end of a span may come to stand below the other
  return meanings.filter(({ answer }) => readFigure(answer).wrong === undefined)
}

function traces(mark: string | undefined): readonly Option[] {
  const nothing = { answer: 'ND', means: 'nothing seen; the limit of the kit is not told' }
  if (mark === undefined) return [nothing]
  return [{ answer: `<${mark}`, means: `a colour below the first mark of the chart, ${mark}` }, nothing]
}
