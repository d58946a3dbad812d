import type { SystemText } from '@holdfast/logbook'
import type { Piece } from './blank.ts'
import type { Path } from './path.ts'

/** A letter is the system file itself; what it does not say yet stands in `unsaid`. */
export type Letter = Omit<SystemText, 'unsaid'> & { readonly unsaid?: readonly string[] }

/** A sentence with blanks, about one thing of the document. */
export interface Sentence {
  readonly key: string
  readonly pieces: readonly Piece[]
  /** What is taken out of the document where the sentence does not hold. */
  readonly removes?: { readonly path: Path; readonly words: string }
}

/** Puts something more into the document, and so a sentence into the letter. */
export interface More {
  readonly words: string
  readonly path: Path
  readonly value: unknown
}

export interface Paragraph {
  readonly title: string
  readonly sentences: readonly Sentence[]
  /** What can be added; sentences appear when they matter. */
  readonly more: readonly More[]
}

/** A part of the letter, made of what the document has. */
export type ParagraphOf = (letter: Letter) => Paragraph
