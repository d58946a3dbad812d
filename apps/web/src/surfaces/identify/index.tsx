import '../../style/identify.css'
import { algaeKinds } from '@holdfast/facts'
import { findingInWords, type Identification, identify } from '@holdfast/identification'
import { typedTraits } from '@holdfast/logbook'
import { useEffect, useMemo, useRef, useState } from 'preact/hooks'
import { keepStarted, nameOfStart, started } from '../../record/log/started.ts'
import { addressOf, fromAddress, intoAddress } from '../../shell/address.ts'
import { speak } from '../../shell/spoken.ts'
import type { SystemData } from '../../shell/system-data.ts'
import { AnyTrait } from './any-trait.tsx'
import { Cautions } from './cautions.tsx'
import { Finding } from './finding.tsx'
import { type Noted, note, notedIn, nothingNoted, passOver, takeBack, textOf } from './noted.ts'
import { NotedList } from './noted-list.tsx'
import { Question } from './question.tsx'

const headings: Readonly<Record<Identification['ends'], string>> = {
  'not yet': 'How it stands',
  agreed: 'What it is',
  open: 'What it may be',
}

/** The field key: what a growth is, by one look after the other, in any order. */
export function Identify({ data }: { readonly data: SystemData }) {
  const [noted, setNoted] = useState<Noted>(() =>
    notedIn({ noted: fromAddress('noted'), unknown: fromAddress('unknown') }),
  )
  /** A trait that the keeper wants to say though it is not asked for. */
  const [chosen, setChosen] = useState<string | undefined>()
  const found = useMemo(() => identify(noted.answers, noted.passedOver, chosen), [noted, chosen])
  const trait = found.next
  const isBegun = Object.keys(noted.answers).length + noted.passedOver.length > 0
  const isEnded = found.ends !== 'not yet'
  const likeliest = found.chances[0]?.key ?? ''
  const sure = found.finer?.ends === 'agreed' ? found.finer.chances[0]?.key : undefined
  const genus = sure === undefined ? {} : { finer: sure }
  const canClimb = algaeKinds().some(({ key }) => key === likeliest)

  const say = (next: Noted) => {
    intoAddress({ ...textOf(next) })
    setChosen(undefined)
    setNoted(next)
  }
  // Where a look comes next it is read aloud by its heading; how things stand by now is said beside it.
  useEffect(() => {
    if (isBegun) speak(findingInWords(found))
  }, [found, isBegun])
  useFocusOn(isEnded && chosen === undefined ? 'finding' : 'look', `${chosen} ${JSON.stringify(noted)}`)

  const write = () => {
    const name = nameOfStart(data.system.id, 'observation')
    // What else was filled in before one came here stays: the surface, and the day.
    const before = started(name) ?? { typed: {}, units: {}, when: 'now' }
    keepStarted(name, { ...before, typed: { ...before.typed, traits: typedTraits(noted.answers) } })
    location.assign(addressOf('record', undefined, { kind: 'observation' }))
  }
  const isAct = isEnded && found.best.response.cautions !== undefined
  const isByHand = isAct || (trait !== undefined && trait.contact !== 'none')
  const cautions = <Cautions cautions={found.cautions} inFull={isByHand} />
  const finding = isBegun && (
    <Finding found={found} heading={headings[found.ends]} {...(isEnded && { minded: cautions })} />
  )
  return (
    <section class="view identify" aria-labelledby="identify-title">
      <h2 id="identify-title">Name a growth</h2>
      <p class="lead">
        Say what you see, in any order. Eyes and photos come first; nothing is touched while it may be slime.
      </p>
      {!isEnded && (isBegun || chosen !== undefined) && cautions}
      {isEnded && finding}
      {trait && (
        <Question
          trait={trait}
          isExtra={isEnded && chosen === undefined}
          handsOff={found.handsOff}
          onState={(state) => say(note(noted, trait.key, state))}
          onPassOver={() => say(passOver(noted, trait.key))}
        />
      )}
      <AnyTrait noted={noted} handsOff={found.handsOff} onChoose={({ key }) => setChosen(key)} />
      {!isEnded && finding}
      <NotedList noted={noted} onTakeBack={(key) => say(takeBack(noted, key))} />
      {isBegun && (
        <p class="acts">
          {Object.keys(noted.answers).length > 0 && (
            <button type="button" class="large" onClick={write}>
              Write it into the log
            </button>
          )}
          {isEnded && canClimb && (
            <a href={addressOf('surfaces', 'ladder', { kind: likeliest, ...genus })}>What to do about it</a>
          )}
          <button type="button" class="key" onClick={() => say(nothingNoted)}>
            Begin again
          </button>
        </p>
      )}
    </section>
  )
}

/** What comes next takes the place of the button that was pressed, and the focus with it. */
function useFocusOn(id: string, said: string) {
  const before = useRef(said)
  useEffect(() => {
    if (before.current === said) return
    before.current = said
    document.getElementById(id)?.focus()
  }, [id, said])
}
