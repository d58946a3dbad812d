import {
  askWater,
  citedFor,
  type InputName,
  inputNamed,
  type WaterAnswer,
  type WaterIssue,
  type WaterQuantity,
  waterQuantities,
  waterQuantityNamed,
} from '@holdfast/seawater'
import { heldFor } from '../held-for.ts'
import { notRead } from '../not-read.ts'
import { refuse } from '../refuse.ts'
import { table } from '../table.ts'
import type { Terminal } from '../terminal.ts'
import { type TypedInput, typedInput } from '../typed-input.ts'

export interface WaterOptions {
  readonly json?: true
}

/**
 * Reckons a quantity of sea water from inputs such as `S=35 t=25` or `t="77 °F"`; without a quantity lists
 * them all.
 *
 * @returns 2 where it must be asked what is meant, 1 where it cannot be reckoned, else 0
 */
export function waterCommand(
  quantity: string | undefined,
  pairs: readonly string[],
  { json }: WaterOptions,
  terminal: Terminal,
): 0 | 1 | 2 {
  if (quantity === undefined) {
    terminal.out(json ? JSON.stringify(listed(), null, 2) : listInWords())
    return 0
  }
  const typed = pairs.map((pair) => named(pair))
  const inputs = Object.fromEntries(
    typed.flatMap(([name, one]) => ('value' in one ? [[name, one.value] as const] : [])),
  )
  const wrong = [
    ...typed.flatMap(([, one]) => ('wrong' in one ? [one.wrong] : [])),
    ...typed.flatMap(([name], at) =>
      typed.findIndex(([each]) => each === name) < at ? [`${name}: is given twice. Give it once.`] : [],
    ),
  ]
  const asked = typed.map(([, one]) => one).find((one) => 'ask' in one)
  // What is missing is told with what is wrong, but an input that was refused or asked about is not missing.
  const answer = askWater(quantity, inputs)
  const issues = answer.ok
    ? []
    : answer.issues.filter(({ where }) => !typed.some(([name, one]) => name === where && !('value' in one)))
  if (wrong.length + issues.length > 0) {
    terminal.err(`${[...wrong, ...issues.map(inWords)].join('\n')}\n`)
    return 1
  }
  if (asked !== undefined) return notRead(asked, { ...(json && { json }) }, terminal)
  if (answer.ok) terminal.out(json ? asJson(quantity, answer, inputs) : asText(quantity, answer, inputs))
  return 0
}

type Reckoned = Extract<WaterAnswer, { ok: true }>
type Inputs = Readonly<Record<string, number | string>>

function asText(id: string, { value, unit }: Reckoned, inputs: Inputs): string {
  const quantity = known(id)
  const held = heldFor(id, inputs).map(({ input, accepted }) => `${input} ${accepted}`)
  return [
    `${Number(value.toPrecision(6))} ${unitShown(unit)}`.trimEnd(),
    quantity.says,
    ...(held.length > 0 ? [`Holds for ${held.join(', ')}; each with the other inputs as given.`] : []),
    `Rests on ${citedFor(quantity).join('; ')}.`,
  ].join('\n')
}

function asJson(id: string, { value, unit }: Reckoned, inputs: Inputs): string {
  const rests_on = citedFor(known(id))
  return JSON.stringify(
    { quantity: id, value, unit, inputs, holds_for: heldFor(id, inputs), rests_on },
    null,
    2,
  )
}

function unitShown(unit: string): string {
  if (unit === 'same as value') return 'in the unit of value'
  return unit === '1' ? '' : unit
}

function known(id: string): WaterQuantity {
  const quantity = waterQuantityNamed(id)
  if (quantity === undefined) throw new Error(`${id} was reckoned and is none of the list`)
  return quantity
}

function named(pair: string): readonly [string, TypedInput] {
  const at = pair.indexOf('=')
  const [name, typed] = [pair.slice(0, at).trim(), pair.slice(at + 1).trim()]
  if (at < 1 || typed === '')
    throw refuse(
      'no-pair',
      'Input',
      `"${pair}" is no name with a value`,
      'A name and a value such as S=35.',
      'Write each input so.',
    )
  return [name, typedInput(name, typed)]
}

const inWords = ({ where, got, accepted, next }: WaterIssue): string =>
  `${where}: ${got === undefined ? 'is missing' : `"${String(got)}"`}. ${accepted} ${next}`.trim()

function listInWords(): string {
  const quantities = waterQuantities.flatMap(({ id, says, forms }) => [
    `${id}: ${says}`,
    ...forms.map(({ inputs }, n) => `${n === 0 ? '    from' : '    or  '} ${inputs.join(' ')}`),
  ])
  const names = [...new Set(waterQuantities.flatMap(({ forms }) => forms.flatMap(({ inputs }) => inputs)))]
  const inputs = names.map((name) => [name, unitOf(name), inputNamed(name).says])
  return [
    quantities.join('\n'),
    table([{ heading: 'Input' }, { heading: 'Unit or words' }, { heading: 'What it is' }], inputs),
  ].join('\n\n')
}

const unitOf = (name: InputName): string => {
  const input = inputNamed(name)
  if ('unit' in input) return input.unit
  return input.choices.length > 4 ? `${input.choices.slice(0, 3).join(', ')} ...` : input.choices.join(', ')
}

const listed = () =>
  waterQuantities.map(({ id, says, unit, forms }) => ({
    quantity: id,
    says,
    unit: typeof unit === 'string' ? unit : null,
    inputs: forms.map(({ inputs }) => inputs),
  }))
