import { facts } from '@holdfast/facts'
import { type FactMoves, type Sensitivity, type SensitivityAnswer, sensitivity } from '@holdfast/inference'
import { chooseSystem, type Where, withLog } from '../open-log.ts'
import { progress } from '../progress.ts'
import { table } from '../table.ts'
import type { Terminal } from '../terminal.ts'

export interface SensitivityOptions extends Where {
  readonly system?: string
  readonly days: number
  readonly walks: number
  readonly closer: number
  readonly samples: number
  readonly seed: number
  readonly json?: true
}

/** So many facts of each quantity are shown to people; programs get all. */
const shown = 12

/** Which facts move the water and the algae most, from the last day of the log on. */
export async function sensitivityCommand(options: SensitivityOptions, terminal: Terminal): Promise<void> {
  const { log } = await withLog(options, (logbook) => chooseSystem(logbook, options.system))
  const { system, observations, events, ownFacts, from, asOf } = log
  const { days: horizonDays, walks, closer, samples, seed } = options
  const running = progress(terminal, 'Sensitivity')
  const answer = sensitivity(
    { system, observations, events, ownFacts, from, asOf, horizonDays, walks, closer, samples, seed },
    running,
  )
  running.done()
  terminal.out(options.json ? JSON.stringify(asJson(answer, options), null, 2) : inWords(answer, options))
}

const asJson = (
  { days, runs, sensitivities }: SensitivityAnswer,
  { walks, closer, samples, seed }: SensitivityOptions,
): unknown => ({
  days,
  runs,
  walks,
  closer,
  samples,
  seed,
  quantities: sensitivities.map(({ quantity, unit, facts: list }) => ({
    quantity,
    unit,
    facts: list.map(({ fact, moves, spread, shares }) => ({
      fact,
      title: titleOf(fact),
      mean_change: moves,
      spread_of_change: spread,
      variance_share_alone: shares?.first ?? null,
      variance_share_with_others: shares?.total ?? null,
    })),
  })),
})

function inWords(
  { days, runs, sensitivities }: SensitivityAnswer,
  { walks, samples, closer }: SensitivityOptions,
): string {
  return [
    `What moves the water and the algae most in ${days} days, from ${runs} runs.`,
    '',
    `Change: mean change of the quantity on the last day when the fact moves by half of its prior, over ${walks} walks (Morris 1991).`,
    'Spread: of that change; as large as the change itself where it depends on the other facts.',
    ...(closer > 0
      ? [
          `Alone, in all: shares of the variance among the facts looked at closer, from ${samples} samples (Sobol); few samples leave them uncertain, and a share may come out a little below 0.`,
        ]
      : []),
    ...sensitivities.map(tableOf),
  ].join('\n')
}

const tableOf = ({ quantity, unit, facts: list }: Sensitivity): string =>
  `\n${table(
    [
      { heading: `${quantity[0].toUpperCase()}${quantity.slice(1)}` },
      { heading: `change, ${unit}`, stands: 'right' },
      { heading: 'spread', stands: 'right' },
      { heading: 'alone', stands: 'right' },
      { heading: 'in all', stands: 'right' },
      { heading: 'What' },
    ],
    list
      .slice(0, shown)
      .map(({ fact, moves, spread, shares }) => [
        fact,
        figure(moves),
        figure(spread),
        percent(shares?.first),
        percent(shares?.total),
        titleOf(fact),
      ]),
  )}`

const figure = (value: number): string => (value === 0 ? '0' : Number(value.toPrecision(2)).toString())
const percent = (share: number | undefined): string =>
  share === undefined ? '' : `${Math.round(100 * share)} %`

/** What a fact is; the readings at the start are no facts of the catalogue. */
const titleOf = (id: FactMoves['fact']): string =>
  facts().find((one) => one.id === id)?.title ?? 'error of the reading at the start'
