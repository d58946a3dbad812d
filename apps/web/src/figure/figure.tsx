import { useContext } from 'preact/hooks'
import { type ComputedFigure, figureText } from './computed.ts'
import { OpenFigure } from './line.tsx'

/**
 * The only way a computed figure is put on a page: value, interval, unit. A tap or Enter opens its
 * derivation under the line that holds it.
 */
export function Figure({ of }: { readonly of: ComputedFigure }) {
  const line = useContext(OpenFigure)
  const isOpen = line.open === of.id
  return (
    <button
      type="button"
      class="figure"
      aria-expanded={isOpen}
      aria-controls={isOpen ? line.derivation : undefined}
      title={`Where ${of.name} comes from`}
      onClick={() => line.toggle(of.id)}
    >
      {figureText(of)}
    </button>
  )
}
