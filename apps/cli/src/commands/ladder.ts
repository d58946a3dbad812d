import { presentOfPast } from '@holdfast/crew-plan'
import { algaeKind, algaeKinds, UnknownKey } from '@holdfast/facts'
import { type Answers, readAnswers } from '@holdfast/identification'
import { past } from '@holdfast/inference'
import { type LadderAnswer, ladder, type Rung, recentDays } from '@holdfast/ladder'
import { dateOf, type Outbreak, type SystemLog } from '@holdfast/logbook'
import { listed } from '../listed.ts'
import { chooseSystem, type Where, withLog } from '../open-log.ts'
import { progress } from '../progress.ts'
import { refuse } from '../refuse.ts'
import type { Terminal } from '../terminal.ts'

export interface LadderOptions extends Where {
  readonly system?: string
  readonly kind?: string
  readonly members: number
  readonly seed: number
  readonly withCaution?: true
  readonly json?: true
}

/** A day is long enough for a past without a future. */
const horizonDays = 1

/** What to do about the water and the growth on the last day of the log, one measure after the other, and why. */
export async function ladderCommand(options: LadderOptions, terminal: Terminal): Promise<void> {
  const kind = kindIn(options)
  const { log } = await withLog(options, (logbook) => chooseSystem(logbook, options.system))
  const { system, observations, events, ownFacts, outbreaks, salinity_psu, from, asOf } = log
  const again = outbreaks.find(({ stage, algae }) => stage === 'back' && (kind ?? algae) === algae)
  const { members, seed } = options
  const running = progress(terminal, `Ladder over ${members} members`)
  const question = { system, observations, events, ownFacts, from, asOf, horizonDays, members, seed }
  const present = presentOfPast(past(question, running), question)
  running.done()
  const answer = ladder({
    present,
    system,
    observations,
    events,
    from,
    ...kindOf(kind ?? again?.algae),
    ...notedIn(log),
    ...(again?.worked === undefined ? {} : { worked: again.worked }),
    ...(salinity_psu === undefined ? {} : { salinity_psu }),
    ...(options.withCaution ? { withCaution: 'all' } : {}),
  })
  terminal.out(options.json ? JSON.stringify(asJson(log, answer), null, 2) : inWords(log, answer))
}

function kindIn({ kind }: LadderOptions): string | undefined {
  if (kind === undefined) return undefined
  try {
    return algaeKind(kind).key
  } catch (error) {
    if (!(error instanceof UnknownKey)) throw error
    const { got, accepted } = error.issue
    throw refuse(
      'unknown-kind',
      'Kind',
      `"${got}" is none of the catalogue`,
      accepted.join(', '),
      'Mend --kind.',
    )
  }
}

function asJson({ system }: SystemLog, { day, rungs, ...answer }: LadderAnswer): unknown {
  const date = (of: number): string => dateOf(of, system.timeZone)
  return {
    system: system.id,
    as_of: date(day),
    ...answer,
    rungs: rungs.map(({ judgedOn, days, ...rung }) => ({
      ...rung,
      days_low: days.low,
      days_high: days.high,
      judged_on: date(judgedOn),
    })),
  }
}

/** What was noted of a growth of late, the later of a trait holding. */
function notedIn({ entries, asOf, system }: SystemLog): { readonly noted?: Answers } {
  const since = dateOf(asOf - recentDays, system.timeZone)
  const traits = entries
    .flatMap((entry) => (entry.kind === 'observation' && entry.at >= since ? [entry] : []))
    .toSorted((a, b) => (a.at < b.at ? -1 : 1))
    .map(({ body }) => body.traits)
  const read = readAnswers(Object.assign({}, ...traits))
  return read.ok && traits.length > 0 ? { noted: read.answers } : {}
}

/** The key, where it is one of the catalogue: what a keeper calls it in the log may be none. */
const kindOf = (kind: string | undefined): { readonly kind?: string } =>
  algaeKinds().some(({ key }) => key === kind) && kind !== undefined ? { kind } : {}

function inWords({ system, outbreaks }: SystemLog, answer: LadderAnswer): string {
  const { day, title, causes, rungs, leftOut } = answer
  const date = (of: number): string => dateOf(of, system.timeZone)
  const about = title === undefined ? '' : `, ${title}`
  return [
    `Ladder of ${system.name} on ${date(day)}${about}`,
    ...(causes.length === 0
      ? [
          'Nothing stands out: water in its band, nothing broken, no growth seen of late. Look again in a week.',
        ]
      : listed(
          'Why',
          causes.map(({ says }) => says),
        )),
    ...listed('Outbreaks', outbreaks.map(lifeInWords)),
    ...(rungs.length > 1 ? ['One change at a time, unless animals are in danger.'] : []),
    ...rungs.map((rung, at) => said(rung, at + 1, date)),
    ...listed(
      'Not here',
      leftOut.map(({ title, because }) => `${title}: ${because}`),
    ),
  ].join('\n\n')
}

function said(rung: Rung, number: number, date: (day: number) => string): string {
  const {
    title,
    cautions,
    how,
    animals,
    prepare,
    effect,
    evidence,
    days,
    judgedOn,
    seen,
    stop,
    ends,
    risks,
  } = rung
  const lines = [
    ...cautions.map(({ title: warning, says }) => `Mind: ${warning}. ${says}`),
    how,
    ...(animals.length === 0
      ? []
      : [`Here: ${animals.map(({ taxon, tradeName }) => `${tradeName} (${taxon})`).join(', ')}.`]),
    `Before: ${prepare}`,
    `What it does: ${effect} (${evidence})`,
    `Time: ${days.low} to ${days.high} days; do not judge it before ${date(judgedOn)}.`,
    `How you see it: ${seen}`,
    ...(stop === undefined ? [] : [stop]),
    `It ends: ${ends}`,
    `Risks: ${risks}.`,
  ]
  return [`${number}. ${title}`, ...lines.map((line) => `   ${line}`)].join('\n')
}

function lifeInWords({ name, stage, since, done, stopped, worked }: Outbreak): string {
  const dated = (list: Outbreak['done']): string => list.map(({ what, on }) => `${what} (${on})`).join(', ')
  return [
    `${name}: ${stage} since ${since}.`,
    ...(done.length === 0 ? [] : [`Done: ${dated(done)}.`]),
    ...(stopped.length === 0 ? [] : [`Stopped: ${dated(stopped)}.`]),
    ...(worked === undefined ? [] : [`The last time it ended after: ${worked}.`]),
  ].join(' ')
}
