import { useState } from 'preact/hooks'
import type { Act } from '../acts.ts'
import { Dialog } from '../dialog.tsx'
import type { SystemName } from '../system-data.ts'
import { actsFound, everyAct } from './every-act.ts'

interface PaletteOf {
  readonly systems: readonly SystemName[]
  readonly onClose: () => void
}

/** Everything there is to do, found by typing. */
export function Palette({ systems, onClose }: PaletteOf) {
  const [typed, setTyped] = useState('')
  const [at, setAt] = useState(0)
  const found = actsFound(everyAct(systems), typed)
  const chosen = Math.min(at, found.length - 1)
  const go = (act: Act | undefined) => {
    if (act) location.assign(act.address)
  }
  const onKeyDown = (event: KeyboardEvent) => {
    const step = { ArrowDown: 1, ArrowUp: -1 }[event.key]
    if (event.key === 'Enter') {
      event.preventDefault()
      go(found[chosen])
    } else if (step !== undefined && found.length > 0) {
      event.preventDefault()
      const next = (chosen + step + found.length) % found.length
      setAt(next)
      document.getElementById(`act-${next}`)?.scrollIntoView({ block: 'nearest' })
    }
  }
  return (
    <Dialog title="What do you want to do?" onClose={onClose}>
      <span class="typed words-typed">
        <input
          type="text"
          role="combobox"
          aria-label="What you want to do"
          aria-expanded
          aria-controls="acts"
          aria-activedescendant={found.length > 0 ? `act-${chosen}` : undefined}
          autocomplete="off"
          spellcheck={false}
          value={typed}
          onInput={(event) => {
            setTyped(event.currentTarget.value)
            setAt(0)
          }}
          onKeyDown={onKeyDown}
        />
      </span>
      <p class="spoken" role="status">
        {found.length} found
      </p>
      <div class="acts-found" id="acts" role="listbox" aria-label="What there is to do">
        {found.map((act, i) => (
          // biome-ignore lint/a11y/useKeyWithClickEvents: the keys are the combobox's.
          // biome-ignore lint/a11y/useFocusableInteractive: focus stays in the combobox.
          <div
            key={act.words}
            id={`act-${i}`}
            role="option"
            aria-selected={i === chosen}
            onClick={() => go(act)}
          >
            <span>{act.words}</span>
            {act.key && <kbd>{act.key}</kbd>}
          </div>
        ))}
      </div>
      {found.length === 0 && <p class="quiet">Nothing holds “{typed}”.</p>}
    </Dialog>
  )
}
