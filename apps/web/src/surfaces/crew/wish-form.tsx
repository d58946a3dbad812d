import type { System } from '@holdfast/ecosystem'
import { grazer } from '@holdfast/facts'
import { named } from '@holdfast/facts/names'
import { TickList } from './tick-list.tsx'
import type { Ticked } from './wishes.ts'

interface WishFormOf {
  readonly system: System
  readonly ticked: Ticked
  readonly issue: string | undefined
  readonly onTick: (ticked: Ticked) => void
  readonly onAsk: () => void
}

/** What the keeper wants of a plan; left untouched it is as most would have it. */
export function WishForm({ system, ticked, issue, onTick, onAsk }: WishFormOf) {
  const homes = system.vessels.filter(({ id }) => system.surfaces.some(({ vessel }) => vessel === id))
  const names = (taxa: readonly string[]): string =>
    taxa.map((taxon) => grazer(taxon)?.tradeName ?? taxon).join(', ')
  return (
    <form
      class="wishes"
      onSubmit={(event) => {
        event.preventDefault()
        onAsk()
      }}
    >
      {homes.length > 1 && (
        <label>
          For the{' '}
          <select
            value={ticked.vessel}
            onChange={(event) => onTick({ ...ticked, vessel: event.currentTarget.value })}
          >
            <option value="">vessel with most surface</option>
            {homes.map(({ id }) => (
              <option key={id} value={id}>
                {named(id)}
              </option>
            ))}
          </select>
        </label>
      )}
      <label class="check">
        <input
          type="checkbox"
          checked={ticked.withCaution}
          onChange={(event) => onTick({ ...ticked, withCaution: event.currentTarget.checked })}
        />
        also animals that are safe with caution only
      </label>
      <label class="check">
        <input
          type="checkbox"
          checked={ticked.keepAll}
          onChange={(event) => onTick({ ...ticked, keepAll: event.currentTarget.checked })}
        />
        give nobody away that lives there
      </label>
      <p class="limits">
        <label>
          Spend at most{' '}
          <input
            inputMode="decimal"
            size={6}
            value={ticked.budget}
            onInput={(event) => onTick({ ...ticked, budget: event.currentTarget.value })}
          />{' '}
          US dollars
        </label>
        <label>
          Leave at most{' '}
          <input
            inputMode="decimal"
            size={6}
            value={ticked.byHand}
            onInput={(event) => onTick({ ...ticked, byHand: event.currentTarget.value })}
          />{' '}
          g of dry algae a week to my hand
        </label>
      </p>
      <TickList own={system.own_animals} ticked={ticked} onTick={onTick} />
      {ticked.liked.length > 0 && <p class="line">Would like: {names(ticked.liked)}.</p>}
      <label class="check">
        <input
          type="checkbox"
          checked={ticked.onlyLiked}
          onChange={(event) => onTick({ ...ticked, onlyLiked: event.currentTarget.checked })}
        />
        {nobodyNew(ticked.liked.length)}
      </label>
      {ticked.never.length > 0 && <p class="line">Never: {names(ticked.never)}.</p>}
      {issue !== undefined && (
        <p class="issue" role="alert">
          {issue}
        </p>
      )}
      <p class="acts">
        <button type="submit" class="large">
          Work out a crew
        </button>
      </p>
    </form>
  )
}

const nobodyNew = (liked: number): string => `nobody new ${['at all', 'but that one'][liked] ?? 'but these'}`
