import { useState } from 'preact/hooks'
import { chooseWays, ways } from '../ways/ways.ts'
import { keyedActs } from './acts.ts'
import { Dialog } from './dialog.tsx'

/** Keys that lead to no address. */
const others = [
  ['/', 'Find what to do by typing; so does Ctrl or Command with K'],
  ['?', 'This list'],
  ['Escape', 'Close what is open'],
  ['Tab', 'On to the next figure, field or button; Enter opens what a figure is made of'],
] as const

/** All keys, and the switch for those that are a single letter. */
export function KeyList({ onClose }: { readonly onClose: () => void }) {
  const [on, setOn] = useState(ways().keys === 'on')
  const keyed = keyedActs().flatMap(({ key, words }) => (key === undefined ? [] : [[key, words] as const]))
  return (
    <Dialog title="Keys" onClose={onClose}>
      <dl class="key-list">
        {[...keyed, ...others].map(([key, words]) => (
          <div key={key}>
            <dt>
              <kbd>{key}</kbd>
            </dt>
            <dd>{words}</dd>
          </div>
        ))}
      </dl>
      <label class="tick">
        <input
          type="checkbox"
          checked={on}
          onChange={(event) => {
            setOn(event.currentTarget.checked)
            chooseWays({ keys: event.currentTarget.checked ? 'on' : 'off' })
          }}
        />{' '}
        Single letters and marks are keys. Switch them off if you speak to your browser; Ctrl or Command with
        K stays.
      </label>
    </Dialog>
  )
}
