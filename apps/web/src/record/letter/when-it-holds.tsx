import { dayInShort } from '../../ways/dates.ts'

/** Whether the tank changed on a day, or was told wrongly before. */
export interface Tells {
  readonly tells: 'change' | 'mend'
  /** ISO date of a change. */
  readonly from: string
}

interface WhenItHoldsOf {
  readonly tells: Tells
  /** ISO date from which the letter that is shown holds. */
  readonly shown: string
  readonly onTells: (tells: Tells) => void
}

/** "From when?" */
export function WhenItHolds({ tells, shown, onTells }: WhenItHoldsOf) {
  return (
    <fieldset class="choice">
      <legend>From when?</legend>
      <div class="options">
        <label>
          <input
            type="radio"
            name="tells"
            checked={tells.tells === 'change'}
            onChange={() => onTells({ ...tells, tells: 'change' })}
          />
          Something changed on a day
        </label>
        <label>
          <input
            type="radio"
            name="tells"
            checked={tells.tells === 'mend'}
            onChange={() => onTells({ ...tells, tells: 'mend' })}
          />
          It was so before, and the letter was wrong
        </label>
      </div>
      {tells.tells === 'change' && (
        <FromDay from={tells.from} onFrom={(from) => onTells({ ...tells, from })} />
      )}
      {tells.tells === 'change' && tells.from !== '' && tells.from < shown && (
        <p class="quiet" role="status">
          That is before the letter shown, which goes on holding from {dayInShort(shown)}.
        </p>
      )}
    </fieldset>
  )
}

interface FromDayOf {
  readonly from: string
  readonly onFrom: (from: string) => void
}

export function FromDay({ from, onFrom }: FromDayOf) {
  return (
    <div class="blank">
      <label for="letter-from">From</label>
      <span class="typed">
        <input
          id="letter-from"
          type="date"
          value={from}
          onInput={(event) => onFrom(event.currentTarget.value)}
        />
      </span>
    </div>
  )
}
