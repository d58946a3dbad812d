import type { Asked, Option } from './issue.ts'
import type { Figure } from './number-text.ts'
import { question } from './words.ts'

/**
 * A question where the figure itself has two meanings: a comma before three digits, or a trace.
 *
 * @param written  the unit and form, to be set behind each answer
 * @param step     step of the chart in that unit: a trace may be below its first mark
 */
export function whichFigure(
  { doubt, figure }: Figure,
  { where, got, written, step }: { where: string; got: string; written: string; step?: number | undefined },
): Asked | undefined {
  if (doubt === undefined) return undefined
  const code = doubt === 'comma' ? 'which-comma' : 'what-trace'
  const meanings = doubt === 'comma' ? commas(figure) : traces(step)
  const options = meanings.map(({ answer, means }) => ({ answer: `${answer} ${written}`.trim(), means }))
  return { ok: false, ask: { code, where, got, question: question(code, where, got), options } }
}

function commas(figure: string): readonly Option[] {
  const point = figure.replaceAll(',', '.')
  const whole = figure.replaceAll(',', '')
  return [
    { answer: point, means: `the comma is the decimal mark: ${point}` },
    { answer: whole, means: `the comma parts thousands: ${whole}` },
  ]
}

function traces(step: number | undefined): readonly Option[] {
  const nothing = { answer: 'ND', means: 'nothing seen; the limit of the kit is not told' }
  if (step === undefined) return [nothing]
  return [{ answer: `<${step}`, means: `a colour below the first mark of the chart, ${step}` }, nothing]
}
