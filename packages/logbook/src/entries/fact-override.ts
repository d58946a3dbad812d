import { readUnit } from '@holdfast/quantities'

import type { Issue } from '../issue.ts'
import { asTyped, kind, name, typedTexts } from './kind.ts'
import { figure } from './says.ts'
import { z } from './schema.ts'

/**
 * From this day on a fact of the catalogue has other numbers for this system: the keeper measured it, or
 * knows better. The unit is that of the catalogue.
 */
export const factOverride = kind({
  name: 'fact-override',
  title: 'Own value of a fact',
  v: 1,
  body: {
    /** Id in the catalogue, such as foam.k.tank. */
    fact: name,
    low: z.number(),
    typical: z.number(),
    high: z.number(),
    unit: name,
    reason: asTyped.check(z.minLength(1)),
    source: z.exactOptional(asTyped),
    typed: typedTexts,
  },
  blanks: () => [
    { name: 'fact', label: 'Fact', holds: 'words', required: true, hint: 'Its id, such as foam.k.tank' },
    {
      name: 'low',
      label: 'Low',
      holds: 'number',
      required: true,
      hint: 'Only one tank in twenty lies below it',
    },
    { name: 'typical', label: 'Typical', holds: 'number', required: true, hint: 'The value to begin with' },
    {
      name: 'high',
      label: 'High',
      holds: 'number',
      required: true,
      hint: 'Only one tank in twenty lies above it',
    },
    { name: 'unit', label: 'Unit', holds: 'words', required: true, hint: 'That of the fact, such as d⁻¹' },
    { name: 'reason', label: 'Why', holds: 'words', required: true, hint: 'Such as measured in this tank' },
    { name: 'source', label: 'Source', holds: 'words', required: false, hint: 'Where the numbers were read' },
  ],
  understand: (filled) => {
    const [low, typical, high] = [filled.number('low'), filled.number('typical'), filled.number('high')]
    const unit = filled.words('unit')
    const issues = [
      ...(low <= typical && typical <= high ? [] : [outOfOrder(low, typical, high)]),
      ...unitIssue(unit),
    ]
    if (issues.length > 0) return { issues, questions: [] }
    return {
      fact: filled.words('fact'),
      low,
      typical,
      high,
      unit,
      reason: filled.words('reason'),
      ...filled.wordsAs('source', 'source'),
      typed: filled.typed,
    }
  },
  fills: ({ fact, low, typical, high, unit, reason, source }) => ({
    fact,
    low: String(low),
    typical: String(typical),
    high: String(high),
    unit,
    reason,
    ...(source !== undefined && { source }),
  }),
  says: ({ fact, low, typical, high, unit, reason }) =>
    `${fact} is ${figure(typical)} (${figure(low)} to ${figure(high)}) ${unit} here: ${reason}`,
  settles: ({ fact }) => fact,
})

function outOfOrder(low: number, typical: number, high: number): Issue {
  const got = `${low}, ${typical} and ${high} do not rise`
  const accepted = 'Low, typical and high in this order; equal for a value that is certain.'
  return {
    code: 'out-of-order',
    where: 'Low, typical, high',
    got,
    accepted,
    next: 'Look at the three again.',
  }
}

function unitIssue(unit: string): readonly Issue[] {
  if (readUnit(unit).ok) return []
  const accepted = 'The unit that the catalogue shows for the fact, such as d⁻¹ or µmol L⁻¹.'
  return [
    {
      code: 'unknown-unit',
      where: 'Unit',
      got: `"${unit}" is no unit we know`,
      accepted,
      next: 'Copy it from there.',
    },
  ]
}
