import type { Barred as BarredAnimal } from '@holdfast/crew-plan'
import { grazer } from '@holdfast/facts'

/** Who may not come, and why: asked for now and then. */
export function Barred({ barred }: { readonly barred: readonly BarredAnimal[] }) {
  if (barred.length === 0) return null
  return (
    <details class="barred">
      <summary>Who may not come, and why: {barred.length}</summary>
      <ul>
        {barred.map(({ taxon, why }) => (
          <li key={taxon}>
            {grazer(taxon)?.tradeName ?? taxon}: {why}
          </li>
        ))}
      </ul>
    </details>
  )
}
