import type { System } from '@holdfast/ecosystem'
import { plain } from '../../figure/numbers.ts'
import type { Routine } from '../planned.ts'
import { Handle } from './handle.tsx'

export interface LeversOf {
  readonly system: System
  readonly today: Routine | undefined
  readonly set: Routine
  readonly onMove: (routine: Routine) => void
  readonly onSettle: (routine: Routine) => void
  readonly onBack: () => void
}

/** The lever of water changes: how much and how often. */
export function Levers({ system, today, set, onMove, onSettle, onBack }: LeversOf) {
  const whole = system.vessels.reduce((sum, vessel) => sum + vessel.volume_L, 0)
  const moved = today
    ? set.volume_L !== today.volume_L || set.every_days !== today.every_days
    : set.volume_L > 0
  return (
    <section class="levers" aria-labelledby="levers-title">
      <div class="levers-head">
        <h3 id="levers-title">Water changes from today on</h3>
        <button type="button" class="key" disabled={!moved} onClick={onBack}>
          As today
        </button>
      </div>
      <Handle
        title="Volume of a water change"
        unit="L"
        value={set.volume_L}
        today={today?.volume_L}
        min={0}
        max={Math.max(niceHalf(whole), today?.volume_L ?? 0)}
        step={whole > 400 ? 5 : whole > 80 ? 1 : 0.5}
        onMove={(volume_L) => onMove({ ...set, volume_L })}
        onSettle={(volume_L) => onSettle({ ...set, volume_L })}
      />
      <Handle
        title="Days from one to the next"
        unit="days"
        value={set.every_days}
        today={today?.every_days}
        min={1}
        max={Math.max(42, today?.every_days ?? 0)}
        step={1}
        onMove={(every_days) => onMove({ ...set, every_days })}
        onSettle={(every_days) => onSettle({ ...set, every_days })}
      />
      <p class="line quiet">
        That is {plain((set.volume_L / set.every_days) * 7)} L a week, {plain((100 * set.volume_L) / whole)} %
        of your {plain(whole)} L each time.
      </p>
    </section>
  )
}

const niceHalf = (whole_L: number) => Math.max(5, Math.ceil(whole_L / 2 / 5) * 5)
