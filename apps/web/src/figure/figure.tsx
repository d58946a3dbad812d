import { useContext, useId } from 'preact/hooks'
import { type ComputedFigure, figureText } from './computed.ts'
import { OpenFigure } from './line.tsx'

/**
 * The only way a computed figure is put on a page: value, interval, unit. A tap or Enter opens its
 * derivation under the line that holds it.
 */
export function Figure({ of }: { readonly of: ComputedFigure }) {
  const id = useId()
  const line = useContext(OpenFigure)
  const isOpen = line.open?.id === id
  return (
    <button
      type="button"
      class="figure"
      aria-expanded={isOpen}
      aria-controls={isOpen ? `${id}-derivation` : undefined}
      title={`Where ${of.name} comes from`}
      onClick={() => line.toggle({ id, figure: of })}
    >
      {figureText(of)}
    </button>
  )
}
