import type { Surface, System } from '@holdfast/ecosystem'
import { named } from '@holdfast/facts/names'
import { plain } from '../../figure/numbers.ts'
import { Says } from '../../figure/says.tsx'
import { addressOf } from '../../shell/address.ts'
import { amount } from '../../ways/amounts.ts'
import { dayInShort } from '../../ways/dates.ts'
import { Tuft } from '../tuft.tsx'
import { coverFigure, type ReachGround } from './figures.ts'
import { surveysOf } from './surveys.ts'

interface SurfaceViewOf {
  readonly surface: Surface
  readonly ground: ReachGround
}

/** One surface: what it is, what the log says of it, and what the model has on it on the last day of the log. */
export function SurfaceView({ surface, ground }: SurfaceViewOf) {
  const surveys = surveysOf(surface.id, ground.data)
  const covered = ground.told.reach.covered.filter(({ surface: on }) => on === surface.id)
  return (
    <section class="surface" aria-labelledby={`surface-${surface.id}`}>
      <h4 id={`surface-${surface.id}`}>{named(surface.id)}</h4>
      <p class="line">{described(surface, ground.data.system)}</p>
      <Growing kinds={[...surveys.map(({ algae }) => algae), ...covered.map(({ kind }) => kind)]} />
      {surveys.map(({ algae, share, date }) => (
        <p class="line" key={algae}>
          Surveyed on {dayInShort(date)}: {named(algae)} on {`${plain(100 * share)}\u00a0%`}.
        </p>
      ))}
      {covered.map((one) => (
        <Says
          key={one.kind}
          sentence={[`The model has ${named(one.kind)} on `, coverFigure(one, ground), ' of it.']}
        />
      ))}
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

function described(
  { vessel, area_m2, light_umol_m2_s, light_h_per_day, age_days, ...surface }: Surface,
  { vessels }: System,
): string {
  const where = vessels.length > 1 ? `In the ${named(vessel)}: ` : ''
  const light =
    light_umol_m2_s > 0
      ? `lit with ${plain(light_umol_m2_s)} µmol/m²/s for ${plain(light_h_per_day)} hours a day`
      : 'dark'
  const cleaned = surface.hand_cleaned_every_days
  const hand =
    cleaned === undefined ? '' : `, cleaned by hand every ${cleaned === 1 ? 'day' : `${plain(cleaned)} days`}`
  const age = age_days >= 60 ? `${plain(Math.round(age_days / 30.4))} months` : `${plain(age_days)} days`
  return `${where}${amount('area', area_m2)}, ${light}, ${age} old when it was described${hand}.`
}
