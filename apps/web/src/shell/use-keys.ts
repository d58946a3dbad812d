import { useLayoutEffect } from 'preact/hooks'
import { ways } from '../ways/ways.ts'
import { keyedActs } from './acts.ts'

export type Sheet = 'palette' | 'keys'

const sheets: Readonly<Record<string, Sheet>> = { '/': 'palette', '?': 'keys' }

/**
 * Listens to keys that are pressed outside a field; while a sheet opens or is open they are the sheet's. From the
 * moment at which the page stands, not a frame later: who knows the keys presses one as soon as the page is seen.
 */
export function useKeys(isOpen: boolean, open: (sheet: Sheet) => void): void {
  useLayoutEffect(() => {
    if (isOpen) return
    const press = (event: KeyboardEvent) => {
      if ((event.ctrlKey || event.metaKey) && event.key.toLowerCase() === 'k') {
        event.preventDefault()
        open('palette')
        return
      }
      const isChord = event.ctrlKey || event.metaKey || event.altKey
      if (ways().keys === 'off' || isChord || event.defaultPrevented || isTyping(event.target)) return
      const sheet = sheets[event.key]
      if (sheet) {
        event.preventDefault()
        open(sheet)
        return
      }
      const act = keyedActs().find(({ key }) => key === event.key)
      if (act) location.assign(act.address)
    }
    addEventListener('keydown', press)
    return () => removeEventListener('keydown', press)
  }, [isOpen, open])
}

/** Radio buttons and sliders take letters for nothing; fields and open sheets keep theirs. */
function isTyping(target: EventTarget | null): boolean {
  if (!(target instanceof HTMLElement)) return false
  if (target.closest('dialog') || target.isContentEditable) return true
  if (target instanceof HTMLInputElement)
    return !['radio', 'checkbox', 'range', 'button', 'submit'].includes(target.type)
  return target instanceof HTMLTextAreaElement || target instanceof HTMLSelectElement
}
