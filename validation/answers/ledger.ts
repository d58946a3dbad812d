/** What crossed the border of the system, what went to the water, what was stored: the model's books. */

import type { Plain } from '../case-file.ts'
import type { Atom, Budget } from '../model-answers.ts'
import { isNoModel } from '../model-answers.ts'
import { type Answered, CannotAnswer, type Family, needed, type Question, spanOf, textIn } from './answer.ts'

/** A store that moved by less than this share of what it held is level. */
const levelShare = 0.01

export const ledgerAnswers: Family = { ...answersFor('N'), ...answersFor('P'), ...nitrogenOnly() }

function answersFor(atom: Atom): Family {
  return {
    [`largest_input_${atom}`]: fromBudget(atom, 'words', [], ({ inputs }) => largest(inputs, 'input')),
    [`largest_export_${atom}`]: largestExport(atom),
    [`largest_source_to_water_${atom}`]: fromBudget(atom, 'words', [], ({ toWater }) =>
      largest(toWater, 'source'),
    ),
    [`input_${atom}_mg_d`]: fromBudget(
      atom,
      `mg ${atom} per day`,
      ['source'],
      ({ inputs, days }, { check }) => {
        const source = textIn(check, 'source')
        return (source === undefined ? total(inputs) : amountOf(inputs, source)) / days
      },
    ),
    [`export_${atom}_mg_d`]: fromBudget(
      atom,
      `mg ${atom} per day`,
      ['process'],
      ({ exports, days }, { check }) => {
        const process = textIn(check, 'process')
        return (process === undefined ? total(exports) : amountOf(exports, process)) / days
      },
    ),
    [`fraction_of_${atom}_input_from_feed`]: fraction(atom, 'feed'),
    [`fraction_of_${atom}_input_from_source_water`]: fraction(atom, 'source_water'),
    [`export_share_${atom}`]: fromBudget(atom, '1', ['process'], ({ exports }, { check }) =>
      share(amountOf(exports, needed(textIn(check, 'process'), 'process')), exports),
    ),
    [`storage_change_${atom}_sign`]: fromBudget(atom, 'words', ['account'], ({ stored }, { check }) => {
      const account = needed(textIn(check, 'account'), 'account')
      const { change_mg, start_mg } = needed(
        stored.get(account),
        `an account such as ${[...stored.keys()].join(', ')}`,
      )
      if (Math.abs(change_mg) <= levelShare * Math.abs(start_mg)) return 'level'
      return change_mg > 0 ? 'gains' : 'loses'
    }),
    [`source_sign_${atom}`]: fromBudget(atom, 'words', ['account'], ({ netToWater }, { check }) => {
      const account = needed(textIn(check, 'account'), 'account')
      const net = needed(netToWater.get(account), `an account such as ${[...netToWater.keys()].join(', ')}`)
      return net > 0 ? 'source' : 'sink'
    }),
  }
}

/** Of the exports that have a name: what is not explained is none of them. */
function largestExport(atom: Atom) {
  return fromBudget(atom, 'words', [], ({ exports }) =>
    largest(new Map([...exports].filter(([name]) => name !== 'unexplained')), 'export'),
  )
}

function nitrogenOnly(): Family {
  return {
    export_ratio_N: fromBudget('N', '1', ['numerator', 'denominator'], ({ exports }, { check }) => {
      const sum = (names: unknown) =>
        (Array.isArray(names) ? names : [names]).reduce(
          (all, name) => all + amountOf(exports, String(name)),
          0,
        )
      return sum(check.numerator) / sum(check.denominator)
    }),
    export_of_dissolved_nitrate_mg_N_per_day: fromBudget(
      'N',
      'mg N per day',
      ['process'],
      ({ nitrateTaken, days }, { check }) =>
        (nitrateTaken.get(needed(textIn(check, 'process'), 'process')) ?? 0) / days,
    ),
    export_N_total_below_input: {
      unit: '1',
      answer: (question) => {
        const budget = budgetOf(question, 'N')
        if (isNoModel(budget)) return budget
        const ratio = total(budget.exports) / total(budget.inputs)
        return { value: ratio, holds: ratio < 1 }
      },
    },
    export_share_ratio_N: {
      unit: '1',
      keys: ['process', 'span_a', 'span_b'],
      answer: (question) => {
        const process = needed(textIn(question.check, 'process'), 'process')
        const shares = (['span_a', 'span_b'] as const).map((key) => {
          const [from, to] = spanIn(question, key)
          const budget = question.model.budget(question.file, 'N', from, to)
          return isNoModel(budget) ? budget : share(amountOf(budget.exports, process), budget.exports)
        })
        const [a, b] = shares
        if (typeof a === 'number' && typeof b === 'number') return { value: a / b }
        return { skipped: 'model' }
      },
    },
  }
}

function fraction(atom: Atom, source: string) {
  return fromBudget(atom, '1', [], ({ inputs }) => share(inputs.get(source) ?? 0, inputs))
}

function fromBudget(
  atom: Atom,
  unit: string,
  keys: readonly string[],
  read: (budget: Budget, question: Question) => Plain,
) {
  return {
    unit,
    keys,
    answer: (question: Question): Answered => {
      const budget = budgetOf(question, atom)
      return isNoModel(budget) ? budget : { value: read(budget, question) }
    },
  }
}

function budgetOf({ file, check, model }: Question, atom: Atom) {
  const { from, to } = spanOf(file, check)
  return model.budget(file, atom, from, to)
}

function spanIn({ check }: Question, key: string): readonly [string, string] {
  const span = check[key]
  if (Array.isArray(span) && typeof span[0] === 'string' && typeof span[1] === 'string')
    return [span[0], span[1]]
  if (typeof span === 'object' && span !== null && 'from_' in span && 'to' in span)
    return [String(span.from_), String(span.to)]
  throw new CannotAnswer(`needs ${key} as [from, to]`)
}

/** A name that the books know and that brought nothing is 0. */
function amountOf(amounts: ReadonlyMap<string, number>, name: string): number {
  return amounts.get(name) ?? 0
}

function largest(amounts: ReadonlyMap<string, number>, what: string): string {
  const [name, amount] = [...amounts].reduce((most, one) => (one[1] > most[1] ? one : most), [
    'nothing',
    0,
  ] as readonly [string, number])
  if (amount <= 0) throw new CannotAnswer(`the books show no ${what}`)
  return name
}

function share(part: number, amounts: ReadonlyMap<string, number>): number {
  const whole = total(amounts)
  if (whole === 0) throw new CannotAnswer('the books show nothing to take a share of')
  return part / whole
}

function total(amounts: ReadonlyMap<string, number>): number {
  return [...amounts.values()].reduce((sum, amount) => sum + amount, 0)
}
