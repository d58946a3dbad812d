import { Figure } from '../../figure/figure.tsx'
import { TableLine } from '../../figure/line.tsx'
import { plain, written } from '../../figure/numbers.ts'
import type { Span } from '../../worker/answers.ts'
import { dayText } from '../days.ts'
import { fanFigure, type OutlookGround } from './figures.ts'
import type { Subject } from './subjects.ts'

/** All that a fan shows: each day with its bands, and the readings. */
export function FanTable({
  subject,
  shown,
  ground,
}: {
  readonly subject: Subject
  readonly shown: Span
  readonly ground: OutlookGround
}) {
  const zone = ground.data.system.timeZone
  const { days, quantiles } = subject.fan
  const seen = days.flatMap((day, i) => (day >= shown.from && day <= shown.to ? [i] : []))
  const readingsOn = (day: number) =>
    subject.readings.filter(({ reading }) => Math.floor(reading.day) === Math.floor(day))
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
          </tr>
        </thead>
        <tbody>
          {seen
            .map((i) => [i, fanFigure(subject, i, ground)] as const)
            .map(([i, figure]) => (
              <TableLine key={i} figures={[figure]} columns={4}>
                <th scope="row">{dayText(days[i] ?? 0, zone)}</th>
                <td>
                  <Figure of={figure} />
                </td>
                <td class="number">{middleHalf(quantiles.p25[i], quantiles.p75[i], subject)}</td>
                <td class="number">
                  {readingsOn(days[i] ?? 0)
                    .map(
                      ({ reading }) =>
                        `${reading.belowDetection ? 'under ' : ''}${plain(reading.value * subject.factor)} ${subject.unit}`,
                    )
                    .join(', ')}
                </td>
              </TableLine>
            ))}
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
