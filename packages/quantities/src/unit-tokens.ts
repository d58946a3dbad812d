/** The pieces of a unit's text. */
export type UnitToken =
  | { readonly is: 'word'; readonly text: string }
  | { readonly is: 'number' | 'exponent'; readonly value: number }
  | { readonly is: 'slash' | 'times' | 'open' | 'close' }

const superscripts = '⁰¹²³⁴⁵⁶⁷⁸⁹'

const WORD = /^(?:%|‰|°[CF]|(?:\p{L}+[0-9]*)+(?:-\p{L}+)*)/u
const NUMBER = /^\d+(?:\.\d+)?/
const EXPONENT = /^(?:\^?([-−]?\d+(?:\.\d+)?)|([⁻]?[⁰¹²³⁴⁵⁶⁷⁸⁹]+))/

const marks: Readonly<Record<string, UnitToken>> = {
  '/': { is: 'slash' },
  '·': { is: 'times' },
  '⋅': { is: 'times' },
  '*': { is: 'times' },
  '×': { is: 'times' },
  '(': { is: 'open' },
  ')': { is: 'close' },
}

/** The pieces in order; undefined where a piece is none of ours. */
export function unitTokens(text: string): readonly UnitToken[] | undefined {
  const tokens: UnitToken[] = []
  // U+03BC and U+00B5 look alike and are both typed
  let rest = text.replaceAll('μ', 'µ').trim()
  while (rest !== '') {
    const taken = takeWord(rest, tokens) ?? takeMark(rest, tokens)
    if (taken === undefined) return undefined
    rest = rest.slice(taken).trimStart()
  }
  return tokens
}

function takeWord(rest: string, tokens: UnitToken[]): number | undefined {
  const found = WORD.exec(rest)?.[0]
  if (found === undefined) return undefined
  if (found === 'per') {
    tokens.push({ is: 'slash' })
    return found.length
  }
  // 'm2' and 'cm3' end in an exponent, 'NO3' and 'CaCO3' do not
  const split = /^([kcdmµu]?m|[kcdmµu]?g|[kcdmµu]?L|ft|in|d|h|s)([23])$/.exec(found)
  const word = split?.[1] ?? found
  tokens.push({ is: 'word', text: word })
  const exponent = EXPONENT.exec(rest.slice(word.length))
  if (exponent === null) return word.length
  const digits = (exponent[1] ?? exponent[2] ?? '')
    .replace(/[⁻−]/, '-')
    .replace(/[⁰¹²³⁴⁵⁶⁷⁸⁹]/g, (digit) => String(superscripts.indexOf(digit)))
  tokens.push({ is: 'exponent', value: Number(digits) })
  return word.length + exponent[0].length
}

function takeMark(rest: string, tokens: UnitToken[]): number | undefined {
  const number = NUMBER.exec(rest)?.[0]
  if (number !== undefined && Number(number) > 0) {
    tokens.push({ is: 'number', value: Number(number) })
    return number.length
  }
  const mark = marks[rest.charAt(0)]
  if (mark === undefined) return undefined
  tokens.push(mark)
  return 1
}
