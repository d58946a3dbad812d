import type { Sheet } from './use-keys.ts'

/** The ways about for those at a desk. */
export function Footer({ onOpen }: { readonly onOpen: (sheet: Sheet) => void }) {
  return (
    <footer>
      <button type="button" class="key" onClick={() => onOpen('palette')}>
        Find what to do
      </button>
      <button type="button" class="key" onClick={() => onOpen('keys')}>
        Keys
      </button>
    </footer>
  )
}
