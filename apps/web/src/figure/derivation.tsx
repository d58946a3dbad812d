import type { FactUsed } from '../worker/answers.ts'
import { type ComputedFigure, figureText, isExact, type LogEntry } from './computed.ts'
import { plain } from './numbers.ts'

/** Where a figure comes from: formula with values put in, facts with source, entries of the log. */
export function DerivationInPlace({ id, of }: { readonly id: string; readonly of: ComputedFigure }) {
  const { says, steps, facts, entries } = of.derivation()
  return (
    <section class="derivation" id={id} aria-label={`Where ${of.name} comes from`}>
      <p>
        <b>{of.name}:</b> {figureText(of)}. {spreadWords(of)} {says}
      </p>
      {steps.length > 0 && (
        <ol class="steps">
          {steps.map((step) => (
            <li key={step.formula}>
              <span class="formula">{step.formula}</span>
              {step.withValues && <span class="formula values">{step.withValues}</span>}
            </li>
          ))}
        </ol>
      )}
      <Facts facts={facts} />
      <Entries entries={entries} />
    </section>
  )
}

const spreadWords = (of: ComputedFigure) =>
  isExact(of)
    ? 'It follows from what you described and has no spread.'
    : 'In nine cases of ten it lies between the two numbers in brackets.'

function Facts({ facts }: { readonly facts: readonly FactUsed[] }) {
  if (facts.length === 0) return <p class="quiet">No fact of the catalogue enters into it directly.</p>
  return (
    <>
      <h4>Facts it uses, before your log narrows them</h4>
      <ul class="facts">
        {facts.slice(0, shownFacts).map((fact) => (
          <li key={fact.id}>
            <span class="formula name">{fact.name}</span> {fact.title}:{' '}
            <span class="number">
              {plain(fact.typical)} ({plain(fact.low)} to {plain(fact.high)}) {fact.unit}
            </span>
            <span class="quiet">
              {' '}
              {fact.source}; {provenanceWords[fact.provenance] ?? fact.provenance}.
            </span>
          </li>
        ))}
      </ul>
      {facts.length > shownFacts && <p class="quiet">and {facts.length - shownFacts} more.</p>}
    </>
  )
}

const provenanceWords: Readonly<Record<string, string>> = {
  read: 'read in the source',
  memory: 'from memory, to be confirmed',
  estimate: 'our estimate',
}

/** A process with many animals or algae uses many; the first say the kind. */
const shownFacts = 12

/** A long log is cut to its newest entries, and says so. */
const shownEntries = 8

function Entries({ entries }: { readonly entries: readonly LogEntry[] }) {
  if (entries.length === 0) return <p class="quiet">No entry of your log bears on it directly.</p>
  const newest = entries.slice(-shownEntries)
  const left = entries.length - newest.length
  return (
    <>
      <h4>Entries of your log it rests on</h4>
      <ul class="entries">
        {newest.map((entry) => (
          <li key={entry.id}>
            <span class="number">{entry.at}</span> {entry.text}
          </li>
        ))}
      </ul>
      {left > 0 && <p class="quiet">and {left} earlier.</p>}
    </>
  )
}
