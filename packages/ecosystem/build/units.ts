import { catalogueAlone } from '@holdfast/facts'
import { parseUnit } from '@holdfast/quantities'
import {
  type Chosen,
  chosen,
  type Layout,
  layoutOf,
  type Named,
  type PlainState,
  type Process,
} from '../src/declare/index.ts'
import type { System } from '../src/system.ts'
import { parse } from './parse.ts'
import { unitText } from './unit-text.ts'
import { sameUnit, UnitWalk } from './unit-walk.ts'

/** A formula whose units do not agree. */
export interface UnitIssue {
  readonly code: 'wrong-unit' | 'unlike-units' | 'unknown-form' | 'two-units' | 'never-happens'
  /** Id of the process or event. */
  readonly process: string
  /** Which formula: a term, a gather, a transfer; with its text. */
  readonly formula: string
  /** Unit that is asked for. */
  readonly expected: string
  readonly found: string
}

/** The issue as a sentence. */
export const unitIssueText = ({ code, process, formula, expected, found }: UnitIssue): string =>
  `${process}: ${formula}: expected ${expected}, found ${found} (${code}).`

/**
 * Walks every formula of the declarations with the algebra of units; sizes count, so that a factor of a
 * thousand is found as surely as a mole for a litre.
 *
 * @param specimens systems that together have an instance of every declaration
 * @returns all issues of all declarations, none where all is well
 */
export function checkUnits(
  declarations: readonly Process[],
  specimens: readonly System[],
): readonly UnitIssue[] {
  return [
    ...declarations.flatMap((declaration) => issuesOf(declaration, specimens)),
    ...settingsOfTwoUnits(declarations, specimens),
  ]
}

function issuesOf(declaration: Process, specimens: readonly System[]): readonly UnitIssue[] {
  const issues: UnitIssue[] = []
  const report = (code: UnitIssue['code'], formula: string, expected: string, found: string): void => {
    issues.push({ code, process: declaration.id, formula, expected, found })
  }
  const instances = instancesOf(declaration, specimens)
  const instance = instances[0]
  if (instance === undefined) {
    report('never-happens', 'the declaration', 'an instance in a specimen system', 'none')
    return issues
  }
  const layout = layoutOf(declaration)
  const units = declaredUnits(layout)
  const check = (formula: string, text: string, expected: string): void => {
    const walk = new UnitWalk(units, (code, wanted, found) =>
      report(code, `${formula} "${text}"`, wanted, found),
    )
    const found = walk.unitOf(parse(text))
    const asked = parseUnit(expected)
    if (found && !sameUnit(found, asked))
      report('wrong-unit', `${formula} "${text}"`, expected, unitText(found))
  }

  for (const { name, is, unit } of layout.terms) check(`term ${name}`, is, unit)
  for (const { name, sum, unit } of layout.gathers) {
    check(`gather ${name}`, sum, unit)
    const read = Object.values(declaration.reads).find(
      (each) => each.read === 'gathered' && each.gather === name,
    )
    if (read && !sameUnit(parseUnit(read.unit), parseUnit(unit)))
      report('two-units', `gather ${name}`, unit, read.unit)
  }
  for (const [name, read] of Object.entries(declaration.reads)) {
    if (read.read !== 'state') continue
    const { unit } = chosen(read.state, instance.of)
    if (!sameUnit(parseUnit(read.unit), parseUnit(unit))) report('two-units', `read ${name}`, unit, read.unit)
  }
  const perDay = declaration.event ? '' : ' d⁻¹'
  declaration.transfers.forEach((transfer, index) => {
    const formula = `transfer ${index + 1} (${transfer.kind})`
    switch (transfer.kind) {
      case 'move':
        check(formula, transfer.rate, `µmol${perDay}`)
        break
      case 'carry':
        check(formula, transfer.rate, declaration.event ? '1' : 'd⁻¹')
        break
      case 'change':
        for (const { unit } of statesOf(transfer.state, instances).slice(0, 1))
          check(formula, transfer.rate, rateUnit(unit, perDay))
        break
      case 'split':
        check(formula, transfer.rate, `µmol${perDay}`)
        for (const { share } of transfer.into) if (share !== 'rest') check(`${formula}, share`, share, '1')
    }
  })
  return issues
}

/** The states that a change is of, over instances of which some may have none. */
const statesOf = (
  state: Chosen<unknown, PlainState | undefined>,
  instances: readonly Named<unknown>[],
): readonly PlainState[] => instances.flatMap(({ of }) => chosen(state, of) ?? [])

const rateUnit = (unit: string, perDay: string): string => (unit + perDay).replace(/^1 (?=d)/, '')

const instancesOf = (declaration: Process, specimens: readonly System[]) =>
  specimens.flatMap((system) => declaration.each(system, catalogueAlone))

function declaredUnits(layout: Layout): ReadonlyMap<string, string> {
  return new Map([
    ...layout.inputs.map(
      (input) => [input.name, input.from === 'read' ? input.read.unit : input.parameter.unit] as const,
    ),
    ...layout.terms.map(({ name, unit }) => [name, unit] as const),
  ])
}

/** Settings of one id are one number, so every process that reads it must mean the same unit. */
function settingsOfTwoUnits(
  declarations: readonly Process[],
  specimens: readonly System[],
): readonly UnitIssue[] {
  const units = new Map<string, string>()
  const issues = new Map<string, UnitIssue>()
  for (const declaration of declarations)
    for (const [name, read] of Object.entries(declaration.reads)) {
      if (read.read !== 'setting') continue
      for (const { of } of instancesOf(declaration, specimens)) {
        const id = chosen(read.id, of)
        const known = units.get(id) ?? read.unit
        units.set(id, known)
        if (sameUnit(parseUnit(known), parseUnit(read.unit))) continue
        const formula = `read ${name} (setting ${id})`
        const issue = {
          code: 'two-units',
          process: declaration.id,
          formula,
          expected: known,
          found: read.unit,
        } as const
        issues.set(`${declaration.id} ${id}`, issue)
      }
    }
  return [...issues.values()]
}
