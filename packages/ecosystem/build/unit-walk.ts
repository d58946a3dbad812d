import {
  dimensionless,
  divideUnits,
  equalUnits,
  multiplyUnits,
  parseUnit,
  type Unit,
} from '@holdfast/quantities'
import { type FormRule, formRules } from '../src/forms/rules.ts'
import type { Expression } from './parse.ts'
import { unitText } from './unit-text.ts'

type Report = (code: 'unlike-units' | 'unknown-form', expected: string, found: string) => void

/** Equal, and counted from the same zero: a formula that wants °C is wrong by 273 with K. */
export const sameUnit = (a: Unit, b: Unit): boolean =>
  equalUnits(a, b) && (a.zero === undefined || b.zero === undefined || a.zero === b.zero)

/** Works out the unit of a formula from the units of its names, and reports where units do not agree. */
export class UnitWalk {
  constructor(
    private readonly units: ReadonlyMap<string, string>,
    private readonly report: Report,
  ) {}

  /** @returns undefined where a part has no unit to speak of; that has been reported, or is a name nobody declared */
  unitOf(expression: Expression): Unit | undefined {
    switch (expression.type) {
      case 'number':
        return dimensionless
      case 'name': {
        const declared = this.units.get(expression.name)
        return declared === undefined ? undefined : parseUnit(declared)
      }
      case 'negative':
        return this.unitOf(expression.of)
      case 'operation': {
        const left = this.unitOf(expression.left)
        const right = this.unitOf(expression.right)
        if (!left || !right) return left ?? right
        if (expression.operator === '*') return multiplyUnits(left, right)
        if (expression.operator === '/') return divideUnits(left, right)
        if (!sameUnit(left, right)) this.report('unlike-units', unitText(left), unitText(right))
        return left
      }
      case 'form':
        return this.formUnit(expression.form, expression.arguments)
    }
  }

  private formUnit(form: string, given: readonly Expression[]): Unit | undefined {
    const rule: FormRule | undefined = Object.entries(formRules).find(([name]) => name === form)?.[1]
    if (!rule) {
      this.report('unknown-form', `one of ${Object.keys(formRules).join(', ')}`, form)
      return undefined
    }
    if (given.length !== rule.takes.length)
      this.report('unlike-units', `${form} of ${rule.takes.length} values`, `${given.length}`)
    const letters = new Map<string, Unit>()
    rule.takes.forEach((wanted, index) => {
      const expression = given[index]
      const unit = expression && this.unitOf(expression)
      if (!unit) return
      const asked = letters.get(wanted) ?? (isLetter(wanted) ? unit : parseUnit(wanted))
      if (isLetter(wanted)) letters.set(wanted, asked)
      if (!sameUnit(asked, unit)) this.report('unlike-units', `${unitText(asked)} in ${form}`, unitText(unit))
    })
    const [over, under] = rule.gives
      .split(' / ')
      .map((name) => (isLetter(name) ? letters.get(name) : parseUnit(name)))
    return over && under ? divideUnits(over, under) : over
  }
}

const isLetter = (name: string): boolean => name === 'a' || name === 'b'
