import type { Block, Model } from '../assemble/model.ts'
import { type Input, layoutOf } from '../declare/index.ts'
import { type Slots, slotsOf } from './change-settings.ts'
import { changedBy, type Moment } from './moment.ts'

/**
 * Slow processes whose rates a moment moves, by their index; undefined where it may move those of all. A dose or a
 * change of water moves a few that read the water; to work out all anew would be a sixth of the slow evaluations.
 */
class MovedRates {
  private readonly slots: Slots
  private readonly known = new Map<string, readonly number[] | undefined>()

  constructor(private readonly model: Model) {
    this.slots = slotsOf(model)
  }

  /** By several moments together. */
  by(moments: readonly Moment[]): readonly number[] | undefined {
    const moved = new Set<number>()
    for (const moment of moments) {
      const some = this.byOne(moment)
      if (!some) return undefined
      for (const index of some) moved.add(index)
    }
    return [...moved]
  }

  private byOne(moment: Moment): readonly number[] | undefined {
    const what = 'happens' in moment ? `happens ${moment.happens}` : changedBy(moment).join()
    if (!this.known.has(what))
      this.known.set(what, 'happens' in moment ? this.byHappening(moment.happens) : this.bySettings(moment))
    return this.known.get(what)
  }

  private byHappening(id: string): readonly number[] | undefined {
    const event = this.model.events.get(id)
    return event ? this.byFluxes(event) : []
  }

  private byFluxes({ firstFlux, names, compiled }: Block): readonly number[] | undefined {
    const { blocks, eventFluxes } = this.model
    const fluxes = eventFluxes.slice(firstFlux, firstFlux + names.length * compiled.fluxes)
    const touched = new Set(fluxes.flatMap(({ from, to }) => [from, to]))
    const met = (index: number): boolean => touched.has(index)
    const sums = blocks.some(
      (block) =>
        reads(block, (input, k) => block.compiled.summed.includes(k) && readsState(input), met) &&
        (block.compiled.slow || feeds(block, blocks)),
    )
    if (sums) return undefined
    return blocks.flatMap((block) =>
      block.compiled.slow && reads(block, readsState, met) ? [block.compiled.index] : [],
    )
  }

  /** Settings are rarely changed, and what follows from them is worked out for all instances of a process. */
  private bySettings(moment: Moment): readonly number[] | undefined {
    const { blocks } = this.model
    const changed = new Set(changedBy(moment).map((id) => this.slots.get(id)))
    const moves = blocks.some(
      (block) =>
        reads(block, readsOther('setting'), (index) => changed.has(index)) &&
        (block.compiled.slow || feeds(block, blocks)),
    )
    return moves || changed.has(volumeSlot) ? undefined : []
  }
}

const made = new WeakMap<Model, MovedRates>()

/** Those of a model, made when it is first run. */
export function movedRatesOf(model: Model): MovedRates {
  const known = made.get(model) ?? new MovedRates(model)
  made.set(model, known)
  return known
}

/** Every concentration is over the litres of the system. */
const volumeSlot = 0

/** Whether some instance of a process finds what is meant in one of the inputs that are meant. */
function reads(
  { process, inputs }: Block,
  asks: (input: Input, place: number) => boolean,
  met: (index: number) => boolean,
): boolean {
  const layout = layoutOf(process)
  const step = layout.inputs.length
  return layout.inputs.some((input, place) => {
    if (!asks(input, place)) return false
    for (let at = place; at < inputs.length; at += step) if (met(inputs[at])) return true
    return false
  })
}

/** Whether a slow process reads a sum that a process adds to, or a sum made of it. */
function feeds({ gathers }: Block, blocks: readonly Block[]): boolean {
  const added = new Set(gathers)
  return blocks.some(
    (block) =>
      reads(block, readsOther('gathered'), (index) => added.has(index)) &&
      (block.compiled.slow || feeds(block, blocks)),
  )
}

const readsState = (input: Input): boolean =>
  input.from === 'read' && ['amount', 'concentration', 'state'].includes(input.read.read)

const readsOther =
  (what: 'setting' | 'gathered') =>
  (input: Input): boolean =>
    input.from === 'read' && input.read.read === what
