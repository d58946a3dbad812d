import type { Issue, IssueCode } from './issue.ts'
import { type Refused, refused, type Understood, understood } from './issue.ts'
import { isSubstance, molarMass, type Substance, substances } from './molar-masses.ts'
import { dimensionless, divideUnits, multiplyUnits, powerUnit, type Unit } from './unit.ts'
import { remarkWords, unitNamed, unitNamesShown } from './unit-names.ts'
import { type UnitToken, unitTokens } from './unit-tokens.ts'
import { words } from './words.ts'

/** Thrown by what only programmers call; carries the issue as data. */
export class UnitError extends Error {
  override readonly name = 'UnitError'
  readonly issue: Issue

  constructor(issue: Issue) {
    super(words(issue))
    this.issue = issue
  }
}

/**
 * Reads a unit as facts and formulas write it: 'g N m⁻² d⁻¹', 'umol/(g dry h)', '% body mass d⁻¹', '1'.
 *
 * A mass or an amount followed by an atom, ion or salt is an amount of it (mol, by its molar mass); photons
 * after an amount are photons; other words after a unit are remarks out of a fixed list. After a slash stands
 * one unit, or several in brackets.
 */
export function readUnit(text: string, where = 'Unit'): Understood<Unit> | Refused {
  if (/^\s*[-–]\s*$/.test(text)) return understood(dimensionless)
  try {
    return understood(new Reader(text, where).whole())
  } catch (error) {
    if (error instanceof UnitError) return refused(error.issue)
    throw error
  }
}

/** As `readUnit`, for units written in code. @throws UnitError */
export function parseUnit(text: string): Unit {
  const answer = readUnit(text)
  if (answer.ok) return answer.value
  throw new UnitError(answer.issues[0])
}

class Reader {
  private readonly text: string
  private readonly where: string
  private readonly tokens: readonly UnitToken[]
  private at = 0

  constructor(text: string, where: string) {
    this.text = text
    this.where = where
    const tokens = unitTokens(text)
    if (tokens === undefined) throw this.error('unit-syntax')
    this.tokens = tokens
  }

  whole(): Unit {
    if (this.tokens.length === 0) throw this.error('no-unit')
    const unit = this.quotient()
    const sized = Number.isFinite(unit.factor) && unit.factor > 0
    if (this.at < this.tokens.length || !sized) throw this.error('unit-syntax')
    return unit
  }

  private quotient(): Unit {
    let unit = this.factor()
    let divided = false
    for (let token = this.here(); token !== undefined && token.is !== 'close'; token = this.here()) {
      if (token.is === 'slash') {
        this.at++
        divided = true
        unit = divideUnits(unit, this.factor())
        continue
      }
      // 'g/m2 d' is read in two ways by two people
      if (divided && !this.raised()) throw this.error('unit-division')
      if (token.is === 'times') this.at++
      unit = multiplyUnits(unit, this.factor())
    }
    return unit
  }

  private factor(): Unit {
    const token = this.here()
    this.at++
    if (token?.is === 'open') {
      const unit = this.quotient()
      if (this.here()?.is !== 'close') throw this.error('unit-syntax')
      this.at++
      return unit
    }
    if (token?.is === 'number') return { dimension: {}, factor: token.value, remarks: [] }
    if (token?.is !== 'word') throw this.error('unit-syntax')
    const found = this.unitAt(token.text)
    const exponent = this.exponent()
    return powerUnit(this.withRemarks(found), exponent)
  }

  /** A unit by name; names such as 'US gal' are two words. */
  private unitAt(word: string): Unit {
    const next = this.here()
    const pair = next?.is === 'word' ? unitNamed(`${word}_${next.text}`) : undefined
    if (pair !== undefined) this.at++
    const found = pair ?? unitNamed(word)
    if (found === undefined) throw this.error('unknown-unit', unitNamesShown, word)
    return { ...found, remarks: [] }
  }

  private exponent(): number {
    const token = this.here()
    if (token?.is !== 'exponent') return 1
    this.at++
    return token.value
  }

  private withRemarks(named: Unit): Unit {
    let unit = named
    for (let token = this.here(); token?.is === 'word' && !this.raised(); token = this.here()) {
      const word = token.text
      const { mass, amount } = unit.dimension
      if (isSubstance(word) && (mass === 1 || amount === 1) && unit.remarks.length === 0) {
        unit = ofSubstance(unit, word)
      } else if (word === 'photons' && amount === 1) {
        unit = { dimension: { photons: 1 }, factor: unit.factor, remarks: [word] }
      } else if (remarkWords.has(word)) {
        unit = { ...unit, remarks: [...unit.remarks, word] }
      } else if (unitNamed(word) !== undefined || this.startsPair(word)) {
        break
      } else {
        throw this.error('unknown-unit', [...unitNamesShown, ...substances, ...remarkWords], word)
      }
      this.at++
    }
    return unit
  }

  private startsPair(word: string): boolean {
    const after = this.tokens[this.at + 1]
    return after?.is === 'word' && unitNamed(`${word}_${after.text}`) !== undefined
  }

  /** Whether the word here has an exponent: then it is a unit ('g algae animal⁻¹'), else it may be a remark. */
  private raised(): boolean {
    return this.tokens[this.at + 1]?.is === 'exponent'
  }

  private here(): UnitToken | undefined {
    return this.tokens[this.at]
  }

  private error(code: IssueCode, accepted: readonly string[] = unitNamesShown, got = this.text): UnitError {
    const next = code === 'unit-division' ? 'write-brackets' : 'write-unit'
    return new UnitError({ code, where: this.where, got, accepted, next })
  }
}

/** 'g N' and 'mol N' are both amounts. */
function ofSubstance(unit: Unit, substance: Substance): Unit {
  const factor = unit.dimension.mass === 1 ? unit.factor / molarMass(substance) : unit.factor
  return { dimension: { amount: 1 }, factor, remarks: [substance] }
}
