import { type ComponentChildren, createContext, type RefObject } from 'preact'
import { useEffect, useId, useMemo, useRef, useState } from 'preact/hooks'
import type { ComputedFigure } from './computed.ts'
import { DerivationInPlace } from './derivation.tsx'
import { nameFigure, onNamed, takeNamed, unnameFigure } from './named.ts'

interface LineOfFigures {
  /** Id of the figure whose derivation is open. */
  readonly open: string | undefined
  /** Id of the element that holds it. */
  readonly derivation: string
  readonly toggle: (id: string) => void
}

/** Tells a figure which line holds it. */
export const OpenFigure = createContext<LineOfFigures>({
  open: undefined,
  derivation: '',
  toggle: () => undefined,
})

interface LineOf {
  /** Those that stand in it: as they change, an open derivation changes with its figure, or goes with it. */
  readonly figures: readonly ComputedFigure[]
  readonly children: ComponentChildren
}

interface Line<E> {
  readonly context: LineOfFigures
  readonly opened: ComputedFigure | undefined
  readonly close: () => void
  readonly element: RefObject<E | null>
}

function useLine<E extends HTMLElement>(figures: readonly ComputedFigure[]): Line<E> {
  const element = useRef<E>(null)
  const derivation = useId()
  const [open, setOpen] = useState<string | undefined>()
  const ids = figures.map(({ id }) => id)
  const mine = useRef(ids)
  mine.current = ids
  const button = () => element.current?.querySelector<HTMLElement>('.figure[aria-expanded="true"]')

  useEffect(() => {
    const look = () => {
      const wanted = takeNamed(mine.current)
      setOpen(wanted)
      // A link leads to the figure itself, where the page was read from its top so far.
      if (wanted !== undefined) requestAnimationFrame(() => reach(button()))
    }
    if (open === undefined) look()
    return onNamed(look)
  }, [ids.join(' ')])

  const context = useMemo(() => {
    const toggle = (id: string) => {
      if (open === id) unnameFigure(id)
      else nameFigure(id)
      setOpen(open === id ? undefined : id)
    }
    return { open, derivation, toggle }
  }, [open, derivation])
  const close = () => {
    button()?.focus()
    if (open !== undefined) context.toggle(open)
  }
  return { context, opened: figures.find(({ id }) => id === open), close, element }
}

function reach(figure: HTMLElement | null | undefined): void {
  figure?.scrollIntoView({ block: 'center' })
  figure?.focus({ preventScroll: true })
}

/** A sentence or a row of a list that holds figures; the derivation of one of them opens beneath it. */
export function Line({ figures, children, className = 'line' }: LineOf & { readonly className?: string }) {
  const { context, opened, close, element } = useLine<HTMLDivElement>(figures)
  return (
    <OpenFigure.Provider value={context}>
      <div class={className} ref={element}>
        {children}
      </div>
      {opened && <DerivationInPlace id={context.derivation} of={opened} onClose={close} />}
    </OpenFigure.Provider>
  )
}

/** The same for a row of a table. */
export function TableLine({ figures, children, columns }: LineOf & { readonly columns: number }) {
  const { context, opened, close, element } = useLine<HTMLTableRowElement>(figures)
  return (
    <OpenFigure.Provider value={context}>
      <tr ref={element}>{children}</tr>
      {opened && (
        <tr>
          <td colSpan={columns}>
            <DerivationInPlace id={context.derivation} of={opened} onClose={close} />
          </td>
        </tr>
      )}
    </OpenFigure.Provider>
  )
}
