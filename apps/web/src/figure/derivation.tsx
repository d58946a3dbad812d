import { named } from '@holdfast/facts/names'
import { useMemo, useState } from 'preact/hooks'
import { addressOf } from '../shell/address.ts'
import { withMark } from '../ways/decimal.ts'
import type { Explanation, FactUsed } from '../worker/answers.ts'
import { type ComputedFigure, figureText } from './computed.ts'
import { CopyAsText } from './copy.tsx'
import { EntriesBehind } from './entries-behind.tsx'
import { headings, sourceOfFact, spreadWords, typeset, valueOfFact } from './in-words.ts'

interface DerivationOf {
  readonly id: string
  readonly of: ComputedFigure
  readonly onClose: () => void
}

/** Where a figure comes from: formula with values put in, facts with source, entries of the log. */
export function DerivationInPlace({ id, of, onClose }: DerivationOf) {
  const { says, steps, processes, facts, entries } = useMemo(() => of.derivation(), [of])
  return (
    <section
      class="derivation"
      id={id}
      aria-label={`Where ${of.name} comes from`}
      onKeyDown={(event) => {
        if (event.key !== 'Escape') return
        event.preventDefault()
        onClose()
      }}
    >
      <p>
        <b>{of.name}:</b> {figureText(of)}. {spreadWords(of)} {says}
      </p>
      <Steps steps={steps} />
      {facts.length > 0 && <Facts facts={facts} />}
      {processes.length > 0 && <h4>{headings.processes}</h4>}
      {byProcess(processes).map((instances) => (
        <ProcessBehind key={instances[0]?.process} instances={instances} open={processes.length === 1} />
      ))}
      <EntriesBehind ids={entries} />
      <p class="acts">
        <CopyAsText of={of} />
        <button type="button" class="key" onClick={onClose}>
          Put it away
        </button>
      </p>
    </section>
  )
}

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

/** What works at each surface or each animal is one process there; it is named once. */
function byProcess(processes: readonly Explanation[]): readonly (readonly Explanation[])[] {
  const groups = new Map<string, readonly Explanation[]>()
  for (const one of processes) groups.set(one.process, [...(groups.get(one.process) ?? []), one])
  return [...groups.values()]
}

interface ProcessOf {
  readonly instances: readonly Explanation[]
  readonly open: boolean
}

function ProcessBehind({ instances, open }: ProcessOf) {
  const [first] = instances
  if (first === undefined) return null
  if (instances.length === 1)
    return (
      <details open={open}>
        <summary>{[first.title, named(first.instance)].filter(Boolean).join(', ')}</summary>
        <Worked process={first} />
      </details>
    )
  return (
    <details open={open}>
      <summary>
        {first.title}, for each of {instances.length}
      </summary>
      {instances.map((one) => (
        <details key={one.instance}>
          <summary>{named(one.instance)}</summary>
          <Worked process={one} />
        </details>
      ))}
    </details>
  )
}

function Worked({ process }: { readonly process: Explanation }) {
  return (
    <>
      <p>
        {withMark(process.says)} {headings.values}
      </p>
      <Steps steps={process.formulas} />
      <Facts facts={process.facts} />
    </>
  )
}

/** A process with many animals or algae uses many; the first say the kind. */
const shownFacts = 12

function Facts({ facts }: { readonly facts: readonly FactUsed[] }) {
  const [all, setAll] = useState(false)
  if (facts.length === 0) return <p class="quiet">{headings.noFacts}</p>
  return (
    <>
      <h4>{headings.facts}</h4>
      <ul class="facts">
        {facts.slice(0, all ? undefined : shownFacts).map((fact) => (
          <li key={`${fact.id} ${fact.name}`}>
            <span class="formula name">{fact.name}</span>{' '}
            <a href={addressOf('record', 'facts', { words: fact.id })}>{fact.title}</a>:{' '}
            <span class="number">{valueOfFact(fact)}</span>
            <span class="quiet"> {sourceOfFact(fact)}</span>
          </li>
        ))}
      </ul>
      {!all && facts.length > shownFacts && (
        <button type="button" class="key" onClick={() => setAll(true)}>
          Show {facts.length - shownFacts} more
        </button>
      )}
    </>
  )
}
