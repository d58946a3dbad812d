import { withMark } from '../ways/decimal.ts'
import type { Explanation, FactUsed } from '../worker/answers.ts'
import { type ComputedFigure, type Derivation, figureText, type LogEntry } from './computed.ts'
import { headings, sourceOfFact, spreadWords, typeset, valueOfFact, whenOf } from './in-words.ts'

/**
 * A derivation as plain text, to be put into a letter or a notebook: the same words, with units, and the
 * day on which it was worked out.
 *
 * @param entries  the newest of those it rests on
 * @param day  in words
 */
export function derivationText(
  of: ComputedFigure,
  derivation: Derivation,
  entries: readonly LogEntry[],
  day: string,
): string {
  const { says, steps, facts, processes, entries: all } = derivation
  const earlier = all.length - entries.length
  return [
    `${of.name}: ${figureText(of)}`,
    `${spreadWords(of)} ${says}`,
    ...linesOfSteps(steps),
    ...linesOfFacts(facts),
    ...(processes.length > 0 ? ['', headings.processes] : []),
    ...processes.flatMap(linesOfProcess),
    '',
    ...(all.length === 0 ? [headings.noEntries] : [headings.entries]),
    ...entries.map((entry) => `- ${whenOf(entry)}: ${entry.text}`),
    ...(earlier > 0 ? [`- and ${earlier} earlier`] : []),
    '',
    `Worked out by Holdfast on ${day}.`,
  ].join('\n')
}

const linesOfSteps = (steps: Explanation['formulas']): readonly string[] =>
  steps.flatMap(({ formula, withValues }) => [
    `  ${typeset(formula)}`,
    ...(withValues !== '' && withValues !== formula ? [`  ${typeset(withValues)}`] : []),
  ])

const linesOfFacts = (facts: readonly FactUsed[]): readonly string[] =>
  facts.length === 0
    ? []
    : [
        headings.facts,
        ...facts.map((fact) => `- ${fact.name}, ${fact.title}: ${valueOfFact(fact)}. ${sourceOfFact(fact)}`),
      ]

const linesOfProcess = ({ title, instance, says, formulas, facts }: Explanation): readonly string[] => [
  `${[title, instance].filter(Boolean).join(', ')}. ${withMark(says)} ${headings.values}`,
  ...linesOfSteps(formulas),
  ...linesOfFacts(facts),
]
