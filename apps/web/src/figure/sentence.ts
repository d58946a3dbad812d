import { type ComputedFigure, figureText } from './computed.ts'

/** Words and figures in turn; a page shows the figures so that they open, a screen reader hears the same. */
export type Sentence = readonly (string | ComputedFigure)[]

export const figuresIn = (sentence: Sentence): readonly ComputedFigure[] =>
  sentence.filter((part) => typeof part !== 'string')

export const sentenceText = (sentence: Sentence) =>
  sentence.map((part) => (typeof part === 'string' ? part : figureText(part))).join('')
