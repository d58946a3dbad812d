import type { Surface } from '@holdfast/ecosystem'
import { named } from '@holdfast/facts/names'
import { plain } from '../figure/numbers.ts'
import { Says } from '../figure/says.tsx'
import type { Sentence } from '../figure/sentence.ts'
import { addressOf } from '../shell/address.ts'
import type { SystemData } from '../shell/system-data.ts'
import { fanFigure, type OutlookGround, stepAt } from '../water/outlook/figures.ts'
import type { Subject } from '../water/outlook/subjects.ts'
import { amount } from '../ways/amounts.ts'
import { dayInShort } from '../ways/dates.ts'
import { surveysOf } from './surveys.ts'
import { Tuft } from './tuft.tsx'

interface SurfaceViewOf {
  readonly surface: Surface
  readonly data: SystemData
  /** Cover on this surface, a kind of algae each. */
  readonly subjects: readonly Subject[]
  readonly ground: OutlookGround | undefined
}

/** One surface: what it is, what the log says of it, and what the model does. */
export function SurfaceView({ surface, data, subjects, ground }: SurfaceViewOf) {
  const surveys = surveysOf(surface.id, data)
  return (
    <section class="surface" aria-labelledby={`surface-${surface.id}`}>
      <h4 id={`surface-${surface.id}`}>{named(surface.id)}</h4>
      <p class="line">{described(surface)}</p>
      <Growing kinds={[...surveys.map(({ algae }) => algae), ...subjects.map(({ fan }) => fan.algae)]} />
      {surveys.map(({ algae, share, date }) => (
        <p class="line" key={algae}>
          Surveyed on {dayInShort(date)}: {named(algae)} on {`${plain(100 * share)}\u00a0%`}.
        </p>
      ))}
      {ground && subjects.map((subject) => <Says key={subject.key} sentence={modelled(subject, ground)} />)}
      {surveys.length === 0 && (
        <p class="line quiet">
          It was never surveyed, so the model knows its cover from the letter alone.{' '}
          <a href={addressOf('record', undefined, { kind: 'survey' })}>Survey it</a>
        </p>
      )}
    </section>
  )
}

/** What grows here, drawn once a kind. */
function Growing({ kinds }: { readonly kinds: readonly (string | undefined)[] }) {
  const each = [...new Set(kinds)].filter((kind) => kind !== undefined)
  return each.length === 0 ? null : (
    <p class="growing">
      {each.map((kind) => (
        <span key={kind}>
          <Tuft algae={kind} /> {named(kind)}
        </span>
      ))}
    </p>
  )
}

function described({ area_m2, light_umol_m2_s, light_h_per_day, age_days, ...surface }: Surface): string {
  const light =
    light_umol_m2_s > 0
      ? `lit with ${plain(light_umol_m2_s)} µmol/m²/s for ${plain(light_h_per_day)} hours a day`
      : 'dark'
  const cleaned = surface.hand_cleaned_every_days
  const hand = cleaned === undefined ? '' : `, cleaned by hand every ${plain(cleaned)} days`
  const age = age_days >= 60 ? `${plain(Math.round(age_days / 30.4))} months` : `${plain(age_days)} days`
  return `${amount('area', area_m2)}, ${light}, ${age} old when it was described${hand}.`
}

function modelled(subject: Subject, ground: OutlookGround): Sentence {
  const today = fanFigure(subject, stepAt(subject, ground.answer.outlook.asOf), ground)
  return [`The model has ${named(subject.fan.algae ?? 'algae')} on `, today, ' of it.']
}
