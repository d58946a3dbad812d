import type { ComponentChildren } from 'preact'
import { useEffect, useRef } from 'preact/hooks'

interface DialogOf {
  readonly title: string
  readonly onClose: () => void
  readonly children: ComponentChildren
}

/** A sheet over the page, closed with Escape, with its key, or with a tap beside it. */
export function Dialog({ title, onClose, children }: DialogOf) {
  const sheet = useRef<HTMLDialogElement>(null)
  useEffect(() => {
    sheet.current?.showModal()
    sheet.current?.querySelector('input')?.focus()
  }, [])
  return (
    <dialog
      class="sheet"
      ref={sheet}
      aria-labelledby="sheet-title"
      onClose={onClose}
      onClick={(event) => {
        if (event.target === sheet.current) sheet.current?.close()
      }}
      onKeyDown={(event) => {
        if (event.key === 'Escape') event.stopPropagation()
      }}
    >
      <div class="sheet-head">
        <h2 id="sheet-title">{title}</h2>
        <button type="button" class="key" onClick={() => sheet.current?.close()}>
          Close
        </button>
      </div>
      {children}
    </dialog>
  )
}
