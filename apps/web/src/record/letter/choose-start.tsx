import { type Start, starts } from './starts.ts'

/** Three systems as many have them; the nearest is the one to correct least. */
export function ChooseStart({ onStart }: { readonly onStart: (start: Start) => void }) {
  return (
    <>
      <p class="lead">
        Choose what is nearest to yours, then correct what differs. What you do not touch counts as unknown:
        it is taken as usual, what is fed in a wide band, and the letter says so.
      </p>
      <ul class="starts">
        {starts.map((start) => (
          <li key={start.key}>
            <button type="button" class="large" onClick={() => onStart(start)}>
              {start.title}
            </button>
            <p class="quiet">{start.says()}</p>
          </li>
        ))}
      </ul>
    </>
  )
}
