import { type ComponentChildren, createContext } from 'preact'
import { useMemo, useState } from 'preact/hooks'
import type { ComputedFigure } from './computed.ts'
import { DerivationInPlace } from './derivation.tsx'

interface Opened {
  readonly id: string
  readonly figure: ComputedFigure
}

interface LineOfFigures {
  readonly open: Opened | undefined
  readonly toggle: (figure: Opened) => void
}

/** Tells a figure which line holds it. */
export const OpenFigure = createContext<LineOfFigures>({ open: undefined, toggle: () => undefined })

function useLine(): LineOfFigures {
  const [open, setOpen] = useState<Opened | undefined>()
  return useMemo(
    () => ({
      open,
      toggle: (figure: Opened) => setOpen((before) => (before?.id === figure.id ? undefined : figure)),
    }),
    [open],
  )
}

/** A sentence or a row of a list that holds figures; the derivation of one of them opens beneath it. */
export function Line({
  children,
  className = 'line',
}: {
  readonly children: ComponentChildren
  readonly className?: string
}) {
  const line = useLine()
  return (
    <OpenFigure.Provider value={line}>
      <div class={className}>{children}</div>
      {line.open && <DerivationInPlace id={`${line.open.id}-derivation`} of={line.open.figure} />}
    </OpenFigure.Provider>
  )
}

/** The same for a row of a table. */
export function TableLine({
  children,
  columns,
}: {
  readonly children: ComponentChildren
  readonly columns: number
}) {
  const line = useLine()
  return (
    <OpenFigure.Provider value={line}>
      <tr>{children}</tr>
      {line.open && (
        <tr>
          <td colSpan={columns}>
            <DerivationInPlace id={`${line.open.id}-derivation`} of={line.open.figure} />
          </td>
        </tr>
      )}
    </OpenFigure.Provider>
  )
}
