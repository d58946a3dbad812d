import type { SystemName } from '../../shell/system-data.ts'
import { counted } from '../../ways/counts.ts'
import { capital, cellsInWords } from './in-words.ts'
import { type Asked, leftOutTank, type Preview, type Settled } from './protocol.ts'
import { FigureAnswer, Options, Question } from './question.tsx'

interface QuestionsOf {
  readonly preview: Preview
  readonly settled: Settled
  readonly onSettle: (change: Partial<Settled>) => void
}

export const idOfQuestion = (id: string): string => `asked-${id.replaceAll(/\W+/g, '-')}`

/** All that is asked, in the order in which it came up. What is answered stays, and can be changed. */
export function Questions({ preview, settled, onSettle }: QuestionsOf) {
  const { systems, questions, tanks, isUntanked, isRemembered } = preview
  const asksForSystem = systems.length > 1 && isUntanked
  if (questions.length + tanks.length === 0 && !asksForSystem) return null
  return (
    <section aria-labelledby="asked-title">
      <h3 id="asked-title">What it asks</h3>
      {isRemembered && (
        <p class="lead">Answered as for the last sheet with these headings. Change what no longer holds.</p>
      )}
      {asksForSystem && (
        <Question
          id="asked-system"
          words="Of which system are they?"
          about={
            tanks.length > 0 ? 'Where the sheet names no tank.' : 'All readings and notes go to this one.'
          }
          isOpen={false}
        >
          <Options
            options={systems.map(named)}
            chosen={settled.system}
            onChoose={(system) => onSettle({ system })}
          />
        </Question>
      )}
      {tanks.map((tank) => (
        <Question
          key={tank}
          id={idOfQuestion(`tank-${tank}`)}
          words={`Which system is “${tank}”?`}
          about={`The sheet tells tanks apart.${settled.tanks[tank] === undefined ? ' It needs an answer.' : ''}`}
          isOpen={settled.tanks[tank] === undefined}
        >
          <Options
            options={[...systems.map(named), { value: leftOutTank, words: 'Leave it out' }]}
            chosen={settled.tanks[tank]}
            onChoose={(id) => onSettle({ tanks: { ...settled.tanks, [tank]: id } })}
          />
        </Question>
      ))}
      {questions.map((question) => {
        const { id, options } = question
        const onChoose = (answer: string) => onSettle({ answers: { ...settled.answers, [id]: answer } })
        const chosen = settled.answers[id]
        return (
          <Question
            key={id}
            id={idOfQuestion(id)}
            words={question.question}
            about={aboutOf(question)}
            isOpen={question.waiting > 0 && (chosen === undefined || chosen === question.answer)}
          >
            {options.length === 0 ? (
              <FigureAnswer id={`${idOfQuestion(id)}-figure`} chosen={chosen} onChoose={onChoose} />
            ) : (
              <Options
                options={options.map((option) => ({ value: option, words: option }))}
                chosen={chosen}
                onChoose={onChoose}
              />
            )}
          </Question>
        )
      })}
    </section>
  )
}

const named = ({ id, name }: SystemName) => ({ value: id, words: name })

function aboutOf(question: Asked): string {
  const { where, cells, waiting, answer, likely } = question
  const place = where === cells.first[0] ? where : `${where}: ${cellsInWords(question)}`
  const state =
    waiting > 0
      ? `${counted(waiting, 'cell waits', 'cells wait')} for it.`
      : answer === undefined
        ? 'It may stay open; nothing waits for it.'
        : ''
  const speaks = likely === undefined ? '' : `The sheet itself speaks for ${likely}.`
  return [`${capital(place)}.`, state && capital(state), speaks].filter(Boolean).join(' ')
}
