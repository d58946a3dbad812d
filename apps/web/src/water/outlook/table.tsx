import type { ComputedFigure } from '../../figure/computed.ts'
import { Figure } from '../../figure/figure.tsx'
import { TableLine } from '../../figure/line.tsx'
import { written } from '../../figure/numbers.ts'
import type { Span } from '../../worker/answers.ts'
import { dayText } from '../days.ts'
import { weeksAhead } from './chance.ts'
import type { OtherFan } from './fan-view.tsx'
import { chanceFigure, fanFigure, type OutlookGround } from './figures.ts'
import { readIn } from './read-in.ts'
import type { Subject } from './subjects.ts'

interface FanTableOf {
  readonly subject: Subject
  readonly others: readonly OtherFan[]
  readonly shown: Span
  readonly ground: OutlookGround
}

/** All that a fan shows: each day with its bands, the readings, the chance at the end of each week, and variants. */
export function FanTable({ subject, others, shown, ground }: FanTableOf) {
  const { days, quantiles } = subject.fan
  const { asOf } = ground.answer.outlook
  const seen = days.flatMap((day, i) => (day >= shown.from && day <= shown.to ? [i] : []))
  const weeks = weeksAhead(subject, asOf)
  const chanceOn = (day: number) => {
    const week = weeks.find(({ to }) => to === day)
    return week && chanceFigure(subject, week, ground)
  }
  return (
    <div class="scrolls tall" tabIndex={0} role="region" aria-label={`${subject.title}, table`}>
      <table>
        <caption>{subject.title}</caption>
        <thead>
          <tr>
            <th scope="col">Day</th>
            <th scope="col">Median (5 to 95 %)</th>
            <th scope="col">Middle half</th>
            <th scope="col">You read</th>
            {weeks.length > 0 && <th scope="col">In band, the week to this day</th>}
            {others.map(({ mark, ground: { under } }) => (
              <th key={mark} scope="col">
                With {under?.name}
              </th>
            ))}
          </tr>
        </thead>
        <tbody>
          {seen.map((i) => {
            const day = days[i] ?? 0
            const [figure, chance] = [fanFigure(subject, i, ground), chanceOn(day)]
            const under = others.map((other) =>
              day > asOf ? fanFigure(other.subject, i, other.ground) : undefined,
            )
            const all = [figure, chance, ...under].filter((one): one is ComputedFigure => one !== undefined)
            return (
              <TableLine key={i} figures={all} columns={5 + others.length}>
                <th scope="row">{dayText(day, ground.data.system.timeZone)}</th>
                <td>
                  <Figure of={figure} />
                </td>
                <td class="number">{middleHalf(quantiles.p25[i], quantiles.p75[i], subject)}</td>
                <td class="number">{readIn(subject, day)}</td>
                {weeks.length > 0 && <td>{chance && <Figure of={chance} />}</td>}
                {under.map((one, k) => (
                  <td key={others[k]?.mark}>{one && <Figure of={one} />}</td>
                ))}
              </TableLine>
            )
          })}
        </tbody>
      </table>
    </div>
  )
}

function middleHalf(low: number | undefined, high: number | undefined, { factor, unit }: Subject): string {
  if (low === undefined || high === undefined) return ''
  const put = written(low * factor, low * factor, high * factor)
  return `${put.low} to ${put.high} ${unit}`
}
