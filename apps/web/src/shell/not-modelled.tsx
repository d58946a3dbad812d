import type { LedgerAnswer, OutlookAnswer } from '../worker/answers.ts'

/** What this system has and no process covers yet, and what could not be used. */
export function NotModelled({
  ledger,
  outlook,
}: {
  readonly ledger: LedgerAnswer | undefined
  readonly outlook: OutlookAnswer | undefined
}) {
  const lines = [...new Set([...(ledger?.ledger.notModelled ?? []), ...(outlook?.outlook.remarks ?? [])])]
  return (
    <section class="view" id="not-modelled" aria-labelledby="not-modelled-title" tabIndex={-1}>
      <h2 id="not-modelled-title">Not modelled yet</h2>
      {lines.length === 0 ? (
        <p class="lead">Nothing of your system is left out that Holdfast knows of.</p>
      ) : (
        <>
          <p class="lead">Your system has these, and the figures above do not count them:</p>
          <ul class="plain">
            {lines.map((line) => (
              <li key={line}>{line}</li>
            ))}
          </ul>
        </>
      )}
    </section>
  )
}
