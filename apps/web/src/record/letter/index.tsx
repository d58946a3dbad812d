import '../../style/letter.css'
import { fromAddress } from '../../shell/address.ts'
import type { Described } from '../../shell/described.ts'
import { NewLetter } from './new-letter.tsx'
import { OwnLetter } from './own-letter.tsx'

/** A system described by sentences with blanks: a new one, or the one that is shown. */
export function LetterView({ described }: { readonly described: Described | undefined }) {
  const isNew = described === undefined || fromAddress('new') !== null
  return (
    <section class="view letter" aria-labelledby="letter-title">
      <h2 id="letter-title">
        {isNew ? 'A letter about your system' : `The letter of ${described.system.name}`}
      </h2>
      {isNew ? <NewLetter /> : <OwnLetter described={described} />}
    </section>
  )
}
