import type { Alternative, CrewAnswer, Planned, ToFeed } from '@holdfast/crew-plan'
import { caution, measure } from '@holdfast/facts'
import { named } from '@holdfast/facts/names'
import type { Purpose } from '@holdfast/reach'
import { plain } from '../../figure/numbers.ts'
import { Says } from '../../figure/says.tsx'
import type { Sentence } from '../../figure/sentence.ts'
import { today } from '../../record/log/when.ts'
import type { SystemData } from '../../shell/system-data.ts'
import { dayText } from '../../water/days.ts'
import type { CrewTold } from '../../worker/answers.ts'
import { counted } from '../counted.ts'
import { Cautions } from '../identify/cautions.tsx'
import { kindName, placeName } from '../reach/words.ts'
import { Barred } from './barred.tsx'
import { type CrewGround, handFigure, orderFigure } from './figures.ts'
import { issueText } from './issue-text.ts'
import { startOf } from './start-of.ts'
import { Trial } from './trial.tsx'

export type Plan = Exclude<CrewAnswer, { readonly status: 'none' }>

interface PlanOf {
  readonly plan: Plan
  readonly told: CrewTold
  readonly data: SystemData
  readonly isKept: boolean
  /** Shows another crew that would do as well. */
  readonly onOther: (other: Alternative) => void
  /** Keeps it in the log; left out where the plan is of other wishes than those now asked for. */
  readonly onKeep: (() => void) | undefined
  /** Asks for the plan without an animal. */
  readonly onWithout: (taxon: string) => void
}

/** Below this much a week, g dry, there is nothing for a hand to take. */
const nothing = 0.05

/** A crew: cautions first, then who and what for, when they come, what is left to the hand, and how it fared. */
export function PlanView({ plan, told, data, isKept, onOther, onKeep, onWithout }: PlanOf) {
  const { status, crew, steps, byHand, toFeed = [] } = plan
  const ground = { plan, told, data }
  const names = new Map(crew.map(({ taxon, tradeName }) => [taxon, tradeName]))
  const { timeZone } = data.system
  const first = startOf(data.asOf, today(timeZone, new Date()), timeZone)
  const date = (days: number): string => dayText(first + days, timeZone)
  const hand = byHand.filter(({ grams_dry_per_week }) => grams_dry_per_week >= nothing)
  const leave = crew.filter((one) => one.leave > 0)
  if (status === 'refused') return <Refused ground={ground} />
  if (crew.length === 0)
    return (
      <>
        <h3>Nobody</h3>
        <p class="line">
          No animal earns its place: too little grows, or nothing that may live here eats it.
        </p>
        <Barred barred={plan.barred} />
      </>
    )
  return (
    <>
      {steps.length > 0 && <Cautions cautions={measure('crew_add').cautions.map(caution)} inFull />}
      <Mind crew={crew} />
      <h3>Who, and what for</h3>
      {steps.length === 0 && leave.length === 0 && (
        <p class="line">Nobody needs to come or go: those that live there hold what grows.</p>
      )}
      <Members ground={ground} onWithout={onWithout} />
      <Feeding toFeed={toFeed} date={date} />
      {steps.length > 0 && (
        <>
          <h3>When they come</h3>
          <ol class="steps-of-crew">
            {steps.map(({ after_days, animals }) => (
              <li key={after_days}>
                <b>{date(after_days)}</b>:{' '}
                {animals.map(({ taxon, count }) => counted(count, names.get(taxon) ?? taxon)).join(', ')}
              </li>
            ))}
          </ol>
          <BeforeEachStep />
        </>
      )}
      {leave.length > 0 && (
        <p class="line">
          To give away, to another system, a club or a shop:{' '}
          {leave.map((one) => counted(one.leave, one.tradeName)).join(', ')}.
        </p>
      )}
      <h3>Left to your hand</h3>
      {hand.length === 0 && <p class="line">Next to nothing.</p>}
      {hand.map((work) => (
        <Says
          key={`${work.surface} ${work.patch} ${work.kind}`}
          sentence={[`${placeName(work)}: `, handFigure(work, ground), ` of ${kindName(work.kind)}.`]}
        />
      ))}
      <Trial ground={ground} onOther={onOther} />
      {(steps.length > 0 || leave.length > 0) && <Keep isKept={isKept} onKeep={onKeep} />}
      <Barred barred={plan.barred} />
    </>
  )
}

/** The best that was found, and why it does not do. */
function Refused({ ground }: { readonly ground: CrewGround }) {
  const { crew, check, barred } = ground.plan
  const isHungry = check.issues.some(
    ({ code, where }) => code === 'starves' && crew.some(({ taxon, there }) => taxon === where && there > 0),
  )
  return (
    <>
      <h3>No crew to buy</h3>
      <p class="line">
        The best that was found, with those that live there, was tried for a year in the model, and it does
        not do:
      </p>
      <ul class="line">
        {check.issues.map((issue) => (
          <li key={issue.where + issue.got}>{issueText(issue)}</li>
        ))}
      </ul>
      {isHungry && (
        <>
          <Cautions cautions={measure('crew_feed').cautions.map(caution)} inFull />
          <p class="line">
            {measure('crew_feed').how} Or give some to another system, a club or a shop, before they are
            hungry.
          </p>
        </>
      )}
      <details>
        <summary>What was tried</summary>
        <Members ground={ground} />
      </details>
      <Barred barred={barred} />
    </>
  )
}

interface FeedingOf {
  readonly toFeed: readonly ToFeed[]
  readonly date: (days: number) => string
}

/** Those that live there and for which too little grows, the cautions of feeding ahead of how. */
function Feeding({ toFeed, date }: FeedingOf) {
  if (toFeed.length === 0) return null
  const { cautions, how } = measure('crew_feed')
  return (
    <>
      <h3>Too little grows for these of yours</h3>
      <Cautions cautions={cautions.map(caution)} inFull />
      <ul class="line">
        {toFeed.map(({ taxon, tradeName, count, g_week, tooMany, within_days }) => (
          <li key={taxon}>
            {counted(count, tradeName)}: feed {count === 1 ? 'it' : 'them'} by hand from {date(within_days)}{' '}
            on at the latest, with up to {plain(Number(g_week.toPrecision(2)))} g of dried algae a week. Or
            find{' '}
            {tooMany === count
              ? `a home elsewhere for ${count === 1 ? 'it' : 'all of them'}`
              : `homes elsewhere for ${tooMany} of them`}
            .
          </li>
        ))}
      </ul>
      <p class="line">{how}</p>
    </>
  )
}

function Keep({ isKept, onKeep }: Pick<PlanOf, 'isKept' | 'onKeep'>) {
  if (isKept) return <p class="line">This plan is kept: it stands above, with its days.</p>
  if (!onKeep) return null
  return (
    <p class="acts">
      <button type="button" class="large" onClick={onKeep}>
        Keep this plan
      </button>
      <span class="quiet">It goes into your log with its days. Log who came when they come.</span>
    </p>
  )
}

/** What is done before animals of a plan come. */
export const BeforeEachStep = () => (
  <p class="line quiet">
    Before each step test ammonia and nitrite and count who lives. Come later rather than sooner: where those
    of the step before died, find out why first.
  </p>
)

/** What is to be known before an animal is bought; what holds for several of them is said once. */
function Mind({ crew }: { readonly crew: readonly Planned[] }) {
  const comers = crew.filter(({ come }) => come > 0)
  const whom = (words: string): string =>
    comers
      .filter(({ cautions }) => cautions.includes(words))
      .map(({ tradeName }) => tradeName)
      .join(', ')
  const all = [...new Set(comers.flatMap(({ cautions }) => cautions))]
  const groups = [...new Set(all.map(whom))]
  return groups.length === 0 ? null : (
    <section class="cautions" aria-label="Mind of these animals">
      {groups.map((names) => (
        <p key={names}>
          <b>{capital(names)}.</b> {all.filter((words) => whom(words) === names).join(' ')}
        </p>
      ))}
    </section>
  )
}

interface MembersOf {
  readonly ground: CrewGround
  readonly onWithout?: (taxon: string) => void
}

function Members({ ground, onWithout }: MembersOf) {
  const { plan, told } = ground
  return (
    <ul class="members">
      {plan.crew.map((one) => (
        <li key={one.taxon}>
          <b>{counted(one.there + one.come - one.leave, one.tradeName)}</b> <i class="quiet">{one.taxon}</i>
          <Says
            sentence={[...numbersOf(one, ground), forWhat(told.purposes[one.taxon])]}
            className="line of-member"
          />
          {onWithout && one.come > 0 && (
            <button
              type="button"
              class="key"
              aria-label={`The plan without it: ${one.tradeName}`}
              onClick={() => onWithout(one.taxon)}
            >
              The plan without it
            </button>
          )}
        </li>
      ))}
    </ul>
  )
}

function numbersOf(one: Planned, ground: CrewGround): Sentence {
  const { there, come, leave, order, price_usd } = one
  const lives = there === 1 ? 'One lives there. ' : `${there} live there. `
  const given = leave === 1 ? 'One is given away. ' : `${leave} are given away. `
  const price = `${price_usd.low} to ${price_usd.high} US dollars in all. `
  return [
    ...(there > 0 ? [lives] : []),
    ...(leave > 0 ? [given] : []),
    ...(come > 0
      ? [
          order > come ? `${come} to come; with those that are lost in the first month order ` : 'Order ',
          orderFigure(one, ground),
          `, ${price}`,
        ]
      : []),
  ]
}

function forWhat(purpose: Purpose | undefined): string {
  const kinds = (purpose?.kinds ?? []).map(({ kind }) => kindName(kind))
  const surfaces = [...new Set((purpose?.kinds ?? []).flatMap((one) => one.surfaces))].map(named)
  const waste = purpose?.eatsWaste ? ' It eats settled waste too.' : ''
  return kinds.length === 0
    ? `It eats none of what grows here now.${waste}`
    : `Eats ${kinds.join(', ')} on ${surfaces.join(', ')}.${waste}`
}

const capital = (text: string): string => `${text.charAt(0).toUpperCase()}${text.slice(1)}`
