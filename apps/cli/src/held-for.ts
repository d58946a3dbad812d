import { askWater } from '@holdfast/seawater'

/** Between which values an input may lie, the others as given. */
export interface Held {
  readonly input: string
  /** Such as '0 to 42', 'above 0 to 1' or '0 or more'. */
  readonly accepted: string
}

type Inputs = Readonly<Record<string, number | string>>

/** Beyond every range of sea water. */
const beyond = 1e12

/**
 * The range of each input in which a quantity holds. It is had from the refusals of the formulas themselves,
 * asked at values that none of them takes, so that no range is written down a second time.
 *
 * @returns nothing for an input that any number will do for, or of whose ends the refusals do not tell
 * @example heldFor('oxygen_saturation', { S: 35, t: 25 }) // S '0 to 42', t '-1.9223 to 40'
 */
export function heldFor(id: string, inputs: Inputs): readonly Held[] {
  return Object.entries(inputs).flatMap(([input, given]) => {
    if (typeof given !== 'number') return []
    const low = end(id, inputs, input, -beyond)
    const high = end(id, inputs, input, beyond)
    if (low === 'not told' || high === 'not told' || (low === 'none' && high === 'none')) return []
    if (high === 'none') return [{ input, accepted: `${low} or more` }]
    return [{ input, accepted: low === 'none' ? `${high} or less` : `${low} to ${high}` }]
  })
}

/** The last value at the side of `from` that is taken; 'none' where even `from` is. */
function end(id: string, inputs: Inputs, input: string, from: number): string {
  let at = from
  // A formula may stand on another that holds for less: each names its own range.
  for (;;) {
    const answer = askWater(id, { ...inputs, [input]: at })
    if (answer.ok) return at === from ? 'none' : shown(at, from < 0)
    const [issue] = answer.issues
    // A refusal of something else that follows from this input names no end of it.
    if (issue?.code !== 'out-of-range' || issue.got !== at) return 'not told'
    const bound = boundIn(issue.accepted, from < 0)
    if (bound?.at === at && bound.isOpen) return `${from < 0 ? 'above' : 'below'} ${shown(at, from < 0)}`
    if (bound === undefined || bound.at === at) return 'not told'
    at = bound.at
  }
}

const range = /^(?<above>above )?(?<low>\S+) to (?<below>below )?(?<high>\S+)$/

function boundIn(
  accepted: string,
  isLow: boolean,
): { readonly at: number; readonly isOpen: boolean } | undefined {
  const found = range.exec(accepted)?.groups
  const at = Number(isLow ? found?.low : found?.high)
  return Number.isNaN(at) ? undefined : { at, isOpen: (isLow ? found?.above : found?.below) !== undefined }
}

/** To five digits, and never beyond what is held. */
function shown(value: number, isLow: boolean): string {
  const near = Number(value.toPrecision(5))
  if (isLow ? near >= value : near <= value) return String(near)
  const step = 10 ** (Math.floor(Math.log10(Math.abs(value))) - 4)
  return String(Number((isLow ? near + step : near - step).toPrecision(5)))
}
