import type { System } from '@holdfast/ecosystem'
import { useState } from 'preact/hooks'
import { asToday, isSame, type Settings, type Today } from '../settings.ts'
import { Handle } from './handle.tsx'
import type { HandleOfLever, Lever } from './lever.ts'
import { levers } from './list.ts'

export interface LeversOf {
  readonly system: System
  readonly today: Today
  readonly set: Settings
  readonly onMove: (set: Settings) => void
  readonly onSettle: (set: Settings) => void
}

/** What is done from today on: feed, water changes, media. On a telephone one lever at a time is in sight. */
export function Levers({ system, today, set, onMove, onSettle }: LeversOf) {
  const [near, setNear] = useState<Lever['key']>('water')
  const start = asToday(today)
  return (
    <section class="levers" aria-labelledby="levers-title">
      <div class="levers-head">
        <h3 id="levers-title">From today on</h3>
        <button type="button" class="key" disabled={isSame(set, start)} onClick={() => onSettle(start)}>
          As today
        </button>
      </div>
      <fieldset class="span lever-choice">
        <legend class="spoken">Lever in sight</legend>
        {levers.map(({ key, short }) => (
          <label key={key}>
            <input type="radio" name="lever" checked={key === near} onChange={() => setNear(key)} />
            <span>{short}</span>
          </label>
        ))}
      </fieldset>
      {levers.map((lever) => {
        const lacks = lever.lacks(today)
        return (
          <section
            key={lever.key}
            class={lever.key === near ? 'lever-part near' : 'lever-part'}
            aria-labelledby={`lever-${lever.key}`}
          >
            <h4 id={`lever-${lever.key}`}>{lever.title}</h4>
            {lacks === undefined ? (
              <>
                {lever.handles.map((handle) => {
                  const reach = handle.reach(system, today)
                  const to = (value: number): Settings => ({ ...set, [handle.setting]: value })
                  return (
                    <Handle
                      key={handle.setting}
                      of={handle}
                      reach={reach}
                      value={set[handle.setting]}
                      today={today[handle.setting]}
                      costs={costOfStep(lever, handle, set, reach.step)}
                      onMove={(value) => onMove(to(value))}
                      onSettle={(value) => onSettle(to(value))}
                    />
                  )
                })}
                <p class="quiet comes-to">{lever.says(set, system)}</p>
              </>
            ) : (
              <p class="quiet">{lacks}</p>
            )}
          </section>
        )
      })}
    </section>
  )
}

/** "A step up: +130 L of salt water a year." */
function costOfStep(lever: Lever, { setting }: HandleOfLever, set: Settings, step: number): string {
  const moved: Settings = { ...set, [setting]: set[setting] + step }
  const more = lever.yearly(moved) - lever.yearly(set)
  if (more === 0) return 'A step up costs nothing as it stands.'
  return `A step up: ${more > 0 ? '+' : '\u2212'}${lever.inWords(Math.abs(more))} a year.`
}
