import type { BlankAt } from './blank.ts'
import type { Letter, Paragraph } from './paragraph.ts'
import { equipment } from './paragraphs/equipment.ts'
import { feeding } from './paragraphs/feeding.ts'
import { ground } from './paragraphs/ground.ts'
import { life } from './paragraphs/life.ts'
import { supply } from './paragraphs/supply.ts'
import { vessels } from './paragraphs/vessels.ts'

/** The letter's parts, in the order of reading. */
const parts = [vessels, ground, supply, feeding, equipment, life]

export const paragraphsOf = (letter: Letter): readonly Paragraph[] => parts.map((part) => part(letter))

/** Every blank of the letter, in the order of reading. */
export const blanksOf = (letter: Letter): readonly BlankAt[] =>
  paragraphsOf(letter).flatMap(({ sentences }) =>
    sentences.flatMap(({ pieces }) => pieces.flatMap((piece) => (typeof piece === 'string' ? [] : [piece]))),
  )
