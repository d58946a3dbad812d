import type { Exposed } from '@holdfast/reach'
import { Says } from '../../figure/says.tsx'
import { addressOf } from '../../shell/address.ts'
import { Cautions } from '../identify/cautions.tsx'
import { exposedFigure, type ReachGround } from './figures.ts'
import { kindName, placeName } from './words.ts'

/** The places where most is left, in words, and what to do there. */
export function ExposedPlaces({ ground }: { readonly ground: ReachGround }) {
  const { exposed } = ground.told.reach
  const cautions = exposed
    .flatMap(({ deeds }) => deeds.flatMap((deed) => deed.cautions))
    .filter(({ key }, at, all) => all.findIndex((one) => one.key === key) === at)
  return (
    <section aria-labelledby="exposed">
      <h3 id="exposed">Where most is left</h3>
      {exposed.length === 0 && (
        <p class="line">Nowhere: what grows is eaten, or you clean it often enough.</p>
      )}
      <Cautions cautions={cautions} inFull />
      <ol class="exposed">
        {exposed.map((place) => (
          <li key={placeName(place)}>
            <Place place={place} ground={ground} />
          </li>
        ))}
      </ol>
    </section>
  )
}

interface PlaceOf {
  readonly place: Exposed
  readonly ground: ReachGround
}

function Place({ place, ground }: PlaceOf) {
  return (
    <>
      <h4>{placeName(place)}</h4>
      <Says
        sentence={[
          'Left over: ',
          exposedFigure(place, ground),
          `, most of it ${kindName(place.kind)}. ${place.why}`,
        ]}
      />
      <ul class="deeds">
        {place.deeds.map(({ measure, says }) => (
          <li key={`${measure} ${says}`}>{says}</li>
        ))}
      </ul>
      <p class="acts">
        <a href={addressOf('surfaces', 'ladder', { kind: place.kind })}>All that helps against it</a>
      </p>
    </>
  )
}
