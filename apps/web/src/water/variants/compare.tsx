import type { ComputedFigure } from '../../figure/computed.ts'
import { Figure } from '../../figure/figure.tsx'
import { TableLine } from '../../figure/line.tsx'
import type { SystemData } from '../../shell/system-data.ts'
import type { OutlookAnswer } from '../../worker/answers.ts'
import { type Alternative, letterOf } from '../outlook/alternative.ts'
import { weeksAhead } from '../outlook/chance.ts'
import { chanceFigure, fanFigure, type OutlookGround, stepAt } from '../outlook/figures.ts'
import { type Subject, subjectsOf } from '../outlook/subjects.ts'
import type { Today } from '../settings.ts'
import { settingWords } from './words.ts'

export interface CompareOf {
  readonly data: SystemData
  readonly today: Today
  readonly answer: OutlookAnswer
  readonly others: readonly Alternative[]
}

/** One way of keeping the system. */
interface Row {
  readonly name: string
  readonly settings: string
  readonly old: boolean
  readonly ground: OutlookGround
}

/** Today's husbandry, the levers and the variants beside each other: the last day foreseen, and the last week's chance. */
export function Compare({ data, today, answer, others }: CompareOf) {
  const rows: readonly Row[] = [
    { name: 'As today', settings: '', old: false, ground: { answer, data } },
    ...others.map((other) => ({
      name: other.mark === 'levers' ? 'The levers' : `${letterOf(other)}: ${other.name}`,
      settings: settingWords(other.set, today),
      old: other.old,
      ground: { answer: other.answer, data, under: { mark: other.mark, name: other.name } },
    })),
  ]
  const columns = subjectsOf(answer).filter(({ band }) => band !== undefined)
  return (
    <section class="view compare" aria-labelledby="compare-title">
      <h3 id="compare-title">Variants compared</h3>
      <p class="lead">
        Where each ends after the eight weeks that are foreseen, and the chance of being in band in the last
        of them.
      </p>
      <div class="scrolls" tabIndex={0} role="region" aria-label="Variants compared, table">
        <table>
          <thead>
            <tr>
              <th scope="col">Kept how</th>
              {columns.flatMap(({ key, name }) => [
                <th key={key} scope="col">
                  {name}
                </th>,
                <th key={`${key} chance`} scope="col">
                  In band
                </th>,
              ])}
            </tr>
          </thead>
          <tbody>
            {rows.map(({ name, settings, old, ground }) => {
              const cells = columns.flatMap(({ key }) => endOf(key, ground))
              return (
                <TableLine key={name} figures={cells} columns={1 + 2 * columns.length}>
                  <th scope="row">
                    {name} <span class="quiet">{settings}</span>
                  </th>
                  {cells.map((cell) => (
                    <td key={cell.id} class={old ? 'outline-old' : undefined}>
                      <Figure of={cell} />
                    </td>
                  ))}
                </TableLine>
              )
            })}
          </tbody>
        </table>
      </div>
    </section>
  )
}

function endOf(key: string, ground: OutlookGround): readonly ComputedFigure[] {
  const subject = subjectsOf(ground.answer).find((one) => one.key === key)
  return subject ? [atEnd(subject, ground), ...inLastWeek(subject, ground)] : []
}

const atEnd = (subject: Subject, ground: OutlookGround) =>
  fanFigure(subject, stepAt(subject, subject.fan.days.at(-1) ?? 0), ground)

function inLastWeek(subject: Subject, ground: OutlookGround): readonly ComputedFigure[] {
  const last = weeksAhead(subject, ground.answer.outlook.asOf).at(-1)
  return last ? [chanceFigure(subject, last, ground)] : []
}
