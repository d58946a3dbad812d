import type { LedgerAnswer, OutlookAnswer } from '../worker/answers.ts'

interface NotModelledOf {
  readonly ledger: LedgerAnswer | undefined
  readonly outlook: OutlookAnswer | undefined
  /** About entries of the log. */
  readonly remarks: readonly string[]
}

/** What this system has and no process covers yet, and what the outlook has to say about itself. */
export function NotModelled({ ledger, outlook, remarks: ofLog }: NotModelledOf) {
  const left = ledger?.ledger.notModelled
  const remarks = outlook?.outlook.remarks ?? []
  return (
    <section class="view" id="not-modelled" aria-labelledby="not-modelled-title" tabIndex={-1}>
      <h2 id="not-modelled-title">Not modelled yet</h2>
      {!left && <p class="lead">This is known as soon as the ledger is worked out.</p>}
      {left?.length === 0 && <p class="lead">Holdfast knows of nothing in your system that it leaves out.</p>}
      {left && left.length > 0 && (
        <>
          <p class="lead">Your system has these, and the figures above do not count them:</p>
          <Lines lines={left} />
        </>
      )}
      {remarks.length > 0 && (
        <>
          <h3>About the outlook</h3>
          <Lines lines={remarks} />
        </>
      )}
      {ofLog.length > 0 && (
        <>
          <h3>About your log</h3>
          <Lines lines={ofLog} />
        </>
      )}
    </section>
  )
}

function Lines({ lines }: { readonly lines: readonly string[] }) {
  return (
    <ul class="plain">
      {lines.map((line) => (
        <li key={line}>{line}</li>
      ))}
    </ul>
  )
}
