import type { Explanation, FactUsed } from '../worker/answers.ts'
import { type ComputedFigure, figureText, isExact, type LogEntry } from './computed.ts'
import { plain } from './numbers.ts'
import { spaced } from './spaced.ts'

/** Where a figure comes from: formula with values put in, facts with source, entries of the log. */
export function DerivationInPlace({ id, of }: { readonly id: string; readonly of: ComputedFigure }) {
  const { says, steps, processes, facts, entries } = of.derivation()
  return (
    <section class="derivation" id={id} aria-label={`Where ${of.name} comes from`}>
      <p>
        <b>{of.name}:</b> {figureText(of)}. {spreadWords(of)} {says}
      </p>
      <Steps steps={steps} />
      {facts.length > 0 && <Facts facts={facts} />}
      {processes.length > 0 && <h4>Processes behind it</h4>}
      {processes.map((process) => (
        <ProcessBehind
          key={`${process.process}/${process.instance}`}
          process={process}
          open={processes.length === 1}
        />
      ))}
      <Entries entries={entries} />
    </section>
  )
}

const spreadWords = (of: ComputedFigure) =>
  isExact(of)
    ? 'It follows from what you described and has no spread.'
    : 'In nine cases of ten it lies between the two numbers in brackets.'

function Steps({ steps }: { readonly steps: Explanation['formulas'] }) {
  if (steps.length === 0) return null
  return (
    <ol class="steps">
      {steps.map(({ formula, withValues }) => (
        <li key={formula}>
          <span class="formula">{typeset(formula)}</span>
          {withValues !== '' && withValues !== formula && (
            <span class="formula values">{typeset(withValues)}</span>
          )}
        </li>
      ))}
    </ol>
  )
}

/** A declared formula with the signs of print. */
const typeset = (formula: string) =>
  formula.replaceAll(' * ', ' × ').replaceAll(' / ', ' ÷ ').replaceAll(' - ', ' − ')

function ProcessBehind({ process, open }: { readonly process: Explanation; readonly open: boolean }) {
  return (
    <details open={open}>
      <summary>
        {process.title}
        {process.instance ? `, ${spaced(process.instance)}` : ''}
      </summary>
      <p>{process.says} With typical values put in, before your log narrows them:</p>
      <Steps steps={process.formulas} />
      <Facts facts={process.facts} />
    </details>
  )
}

function Facts({ facts }: { readonly facts: readonly FactUsed[] }) {
  if (facts.length === 0) return <p class="quiet">No fact of the catalogue enters into it directly.</p>
  return (
    <>
      <h4>Facts it uses</h4>
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
