import type { LedgerAnswer, OutlookAnswer } from '../worker/answers.ts'

interface NotModelledOf {
  readonly ledger: LedgerAnswer | undefined
  readonly outlook: OutlookAnswer | undefined
  /** About entries of the log. */
  readonly remarks: readonly string[]
}

/** What this system has and no process covers yet, and what ledger, outlook and log have to say about themselves. */
export function NotModelled({ ledger, outlook, remarks: ofLog }: NotModelledOf) {
  const left = ledger?.ledger.notModelled
  // What both have to say, and what stands in the list already, is said once.
  const isListed = (remark: string) =>
    left !== undefined && left.length > 0 && left.every((one) => remark.includes(one))
  const ofOutlook = (outlook?.outlook.remarks ?? []).filter((remark) => !isListed(remark))
  const ofLedger = (ledger?.remarks ?? []).filter((remark) => !ofOutlook.includes(remark))
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
      <Remarks about="the ledger" lines={ofLedger} />
      <Remarks about="the outlook" lines={ofOutlook} />
      <Remarks about="your log" lines={ofLog} />
    </section>
  )
}

function Remarks({ about, lines }: { readonly about: string; readonly lines: readonly string[] }) {
  if (lines.length === 0) return null
  return (
    <>
      <h3>About {about}</h3>
      <Lines lines={lines} />
    </>
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
