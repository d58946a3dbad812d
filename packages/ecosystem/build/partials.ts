import type * as forms from '../src/forms/index.ts'
import { type Expression, parse } from './parse.ts'

/** A form by one of its arguments: `value` is what the form itself gives. */
interface Partials {
  readonly of: readonly string[]
  /** Formulas by the argument they are the derivative by; one that is not here is asked of nothing that changes. */
  readonly by: Readonly<Record<string, string>>
}

/** 1 where the left is below the right, else 0, in forms that there are. */
const below = (left: string, right: string): string =>
  `part(positive(${right} - (${left})), ${right} - (${left}))`

/**
 * Derivatives of the forms, for solvers that need a Jacobian. At a bend they are those of one of its sides.
 * Forms of temperature alone have none: nothing in them changes with the states.
 */
const partials: Readonly<Record<keyof typeof forms, Partials>> = {
  monod: {
    of: ['c', 'half'],
    by: {
      c: 'part(part(half, c + half), c + half)',
      half: '-part(part(c, c + half), c + half)',
    },
  },
  q10: { of: ['factor', 'temperature'], by: {} },
  warmth: { of: ['factor', 'temperature', 'best'], by: {} },
  droop: {
    of: ['quota', 'least', 'fed'],
    by: {
      quota: `${below('least', 'quota')} * ${below('quota', 'fed')} * part(least, quota * quota * (1 - least / fed))`,
    },
  },
  // A power above the bend at 0.05 µmol/L, a line below it.
  freundlich: {
    of: ['c', 'reference', 'exponent'],
    by: { c: `part(value, c) * (exponent + (1 - exponent) * ${below('c', '0.05')})` },
  },
  lightSaturation: { of: ['light', 'saturation'], by: { light: '(1 - value * value) / saturation' } },
  selfShaded: {
    of: ['light', 'depth'],
    by: {
      light: 'selfShaded(1, depth)',
      depth: `part(light * throughCanopy(depth) - value, depth) * ${below('0.000001', 'depth')}`,
    },
  },
  throughCanopy: { of: ['depth'], by: { depth: `-value * ${below('0', 'depth')}` } },
  filmCover: {
    of: ['mass', 'hiding'],
    by: { mass: '3 / hiding * (1 - value)', hiding: '-3 * mass / (hiding * hiding) * (1 - value)' },
  },
  inhibited: {
    of: ['c', 'half'],
    by: {
      c: '-half / ((half + c) * (half + c))',
      half: 'c / ((half + c) * (half + c))',
    },
  },
  fallingLine: {
    of: ['height', 'full', 'limit', 'least'],
    by: {
      height: `-${below('full', 'height')} * ${below('height', 'limit')} * (1 - least) / (limit - full)`,
    },
  },
  positive: { of: ['of'], by: { of: below('0', 'of') } },
  part: { of: ['of', 'whole'], by: { of: 'part(1, whole)', whole: '-part(part(of, whole), whole)' } },
  least: { of: ['a', 'b'], by: { a: below('a', 'b'), b: `1 - ${below('a', 'b')}` } },
  most: { of: ['a', 'b'], by: { a: below('b', 'a'), b: `1 - ${below('b', 'a')}` } },
}

/**
 * The derivative of a form by its k-th argument.
 *
 * @param value  stands for what the form gives; `given` for its arguments
 * @throws Error where the form has no derivative by that argument
 */
export function partialOf(
  form: string,
  k: number,
  value: Expression,
  given: readonly Expression[],
): Expression {
  const found = Object.entries(partials).find(([name]) => name === form)?.[1]
  const formula = found?.by[found.of[k]]
  if (!found || formula === undefined)
    throw new Error(`Form ${form} has no derivative by its argument ${k + 1}. Add one to partials.ts.`)
  const put = new Map(found.of.map((name, n) => [name, given[n]]))
  put.set('value', value)
  return substituted(parse(formula), put)
}

function substituted(expression: Expression, put: ReadonlyMap<string, Expression>): Expression {
  const inner = (part: Expression): Expression => substituted(part, put)
  switch (expression.type) {
    case 'number':
      return expression
    case 'name':
      return put.get(expression.name) ?? expression
    case 'negative':
      return { type: 'negative', of: inner(expression.of) }
    case 'operation':
      return { ...expression, left: inner(expression.left), right: inner(expression.right) }
    case 'form':
      return { ...expression, arguments: expression.arguments.map(inner) }
  }
}
