import { addressOf } from './address.ts'

/** The first sitting begins with the letter. */
export function NoSystem() {
  return (
    <section class="view" aria-labelledby="no-system">
      <h2 id="no-system">There is no system yet</h2>
      <p class="lead">
        Begin with a letter: choose one of three starting points and correct what differs in yours. What you
        do not know you leave as it is. Then bring in a sheet of past tests, or log your first reading.
      </p>
      <p class="acts">
        <a class="large" href={addressOf('record', 'letter', { new: 'yes' })}>
          Describe your system
        </a>
        <a href={addressOf('record', 'copies')}>Bring back a copy of a log</a>
      </p>
    </section>
  )
}
