/** Where a text stops being JSON; line and column count from 1. */
export interface JsonFault {
  readonly line: number
  readonly column: number
  /** What stands there. */
  readonly found: string
}

/**
 * The first place at which a text is not JSON, or undefined where it is. Engines word and place this each
 * in their own way, some without the place, so it is found here and is the same in every browser.
 */
export function jsonFault(text: string): JsonFault | undefined {
  const scanner = new Scanner(text)
  const fault = scanner.fault()
  if (fault === undefined) return undefined
  const before = text.slice(0, fault).split('\n')
  const found =
    fault >= text.length ? 'the end of the file' : `"${text.slice(fault, fault + 12).split('\n')[0]}"`
  return { line: before.length, column: before[before.length - 1].length + 1, found }
}

const number = /-?(?:0|[1-9]\d*)(?:\.\d+)?(?:[eE][+-]?\d+)?/y
const word = /true|false|null/y
const string = /"(?:[^"\\\p{Cc}]|\\["\\/bfnrt]|\\u[\dA-Fa-f]{4})*"/uy
const space = /[ \t\r\n]*/y

class Scanner {
  readonly #text: string
  #at = 0

  constructor(text: string) {
    this.#text = text
  }

  /** Offset of the fault, if any. */
  fault(): number | undefined {
    const good = this.#value() && this.#blank() && this.#at === this.#text.length
    return good ? undefined : this.#at
  }

  #value(): boolean {
    this.#blank()
    const next = this.#text[this.#at]
    if (next === '{') return this.#list('}', () => this.#take(string) && this.#mark(':') && this.#value())
    if (next === '[') return this.#list(']', () => this.#value())
    return this.#take(string) || this.#take(number) || this.#take(word)
  }

  #list(end: string, member: () => boolean): boolean {
    this.#at++
    if (this.#mark(end)) return true
    do {
      this.#blank()
      if (!member()) return false
    } while (this.#mark(','))
    return this.#mark(end)
  }

  #mark(mark: string): boolean {
    this.#blank()
    if (this.#text[this.#at] !== mark) return false
    this.#at++
    return true
  }

  #blank(): boolean {
    return this.#take(space)
  }

  #take(shape: RegExp): boolean {
    shape.lastIndex = this.#at
    const found = shape.exec(this.#text)
    if (found === null) return false
    this.#at += found[0].length
    return true
  }
}
