import {
  askWater,
  type InputName,
  inputNamed,
  type WaterIssue,
  waterQuantities,
  waterQuantityNamed,
} from '@holdfast/seawater'
import { refuse } from '../refuse.ts'
import { table } from '../table.ts'
import type { Terminal } from '../terminal.ts'

export interface WaterOptions {
  readonly json?: true
}

/**
 * Reckons a quantity of sea water from inputs such as `S=35 t=25`; without a quantity lists them all.
 *
 * @returns 1 where it cannot be reckoned, else 0
 */
export function waterCommand(
  quantity: string | undefined,
  pairs: readonly string[],
  { json }: WaterOptions,
  terminal: Terminal,
): 0 | 1 {
  if (quantity === undefined) {
    terminal.out(json ? JSON.stringify(listed(), null, 2) : listInWords())
    return 0
  }
  const inputs = inputsOf(pairs)
  const answer = askWater(quantity, inputs)
  if (!answer.ok) {
    terminal.err(`${answer.issues.map(inWords).join('\n')}\n`)
    return 1
  }
  const { value, unit } = answer
  const says = waterQuantityNamed(quantity)?.says ?? quantity
  terminal.out(
    json
      ? JSON.stringify({ quantity, value, unit, inputs }, null, 2)
      : `${Number(value.toPrecision(6))} ${unit === '1' ? '' : unit}`.trimEnd().concat(`\n${says}`),
  )
  return 0
}

/** A number where it reads as one, else the word as it stands. */
function inputsOf(pairs: readonly string[]): Readonly<Record<string, number | string>> {
  return Object.fromEntries(
    pairs.map((pair) => {
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
      if (/^\d{1,3}(,\d{3})+$/.test(typed))
        throw refuse(
          'which-comma',
          name,
          `"${typed}" may be a decimal or a thousand`,
          'A decimal point, or no mark at all.',
          `Write ${typed.replace(',', '.')} or ${typed.replaceAll(',', '')}.`,
        )
      const number = Number(typed.replace(',', '.'))
      return [name, Number.isNaN(number) ? typed : number]
    }),
  )
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
