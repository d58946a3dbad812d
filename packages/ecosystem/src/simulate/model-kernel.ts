import type { Place } from 'virtual:holdfast-kernel'
import type { Block, Model } from '../assemble/model.ts'
import { layoutOf } from '../declare/index.ts'
import { Kernel, type KernelMemory, ranked, row } from '../integrate/index.ts'
import { shapeOf } from './shape-of.ts'

const members = [0, 1] as const

/** The value of a setting, by its place in the list of a model. */
export interface Setting {
  readonly slot: number
  readonly value: number
}

/**
 * A model in a kernel: its formulas with the addresses of what they read and change, for two members of one
 * husbandry. Parameters are each member's own; settings are the same for both.
 */
export class ModelKernel {
  readonly kernel: Kernel
  /** Blocks of processes that read a setting, by its slot: what it moves is worked out anew. */
  private readonly readers: readonly (readonly number[])[]
  private readonly settings: Float64Array
  /** Whose numbers lie in the memory. */
  owner: object | undefined

  constructor(private readonly model: Model) {
    const events = [...model.events.values()]
    const blocks = [...model.blocks, ...events]
    const quick = new Set(
      model.blocks.flatMap(({ compiled, gathers }) => (compiled.slow ? [] : Array.from(gathers))),
    )
    const lines = ranked(model.gathered, (sum) => (quick.has(sum) ? 0 : 1))
    this.kernel = new Kernel(shapeOf(model), {
      settings: model.settings.ids.length,
      parameters: model.parameters.length,
      sums: model.gathered,
      quickSums: quick.size,
      eventFluxes: model.eventFluxes.length,
      blocks: 1 + Math.max(...blocks.map(({ compiled }) => compiled.index)),
    })
    for (const block of blocks) bind(this.kernel.memory, model, block, lines)
    this.settings = new Float64Array(model.settings.ids.length)
    this.readers = readersOf(model)
  }

  setParameters(member: 0 | 1, parameters: Float64Array): void {
    const { memory } = this.kernel
    memory.setList(memory.at.parameters, member, parameters)
  }

  /** Settings at the start of a run; everything that follows from them and from the parameters is worked out. */
  setSettings(settings: Float64Array): void {
    this.put(settings)
    for (const { compiled } of this.model.blocks) this.kernel.run.settle(compiled.index)
  }

  /** Settings as something changed them; only what reads them is worked out anew. */
  changeSettings(settings: Float64Array): void {
    const stale = new Set<number>()
    for (const [slot, value] of settings.entries())
      if (value !== this.settings[slot]) for (const reader of this.readers[slot]) stale.add(reader)
    this.put(settings)
    for (const index of stale) this.kernel.run.settle(index)
  }

  /** What an event would move, left among the flows of events; before any limit. Its own settings hold just for it. */
  happen(block: Block, own: readonly Setting[]): void {
    const { kernel } = this
    for (const { slot, value } of own) this.putOne(slot, value)
    kernel.run.settle(block.compiled.index)
    kernel.withFlows(() => kernel.run.happen(block.compiled.index))
    for (const { slot } of own) this.putOne(slot, this.settings[slot])
  }

  private putOne(slot: number, value: number): void {
    const { memory } = this.kernel
    memory.doubles(memory.at.settings + row * slot, members.length).fill(value)
  }

  private put(settings: Float64Array): void {
    const { memory } = this.kernel
    for (const member of members) memory.setList(memory.at.settings, member, settings)
    this.settings.set(settings)
  }
}

const made = new WeakMap<Model, ModelKernel>()

/** The kernel of a model, made when it is first run. */
export function kernelOf(model: Model): ModelKernel {
  const known = made.get(model) ?? new ModelKernel(model)
  made.set(model, known)
  return known
}

function readersOf(model: Model): readonly (readonly number[])[] {
  const readers = model.settings.ids.map(() => new Set<number>())
  for (const { process, inputs, names, compiled } of model.blocks) {
    const layout = layoutOf(process)
    readers[0].add(compiled.index)
    for (let n = 0; n < names.length; n++)
      for (const [k, input] of layout.inputs.entries())
        if (input.from === 'read' && input.read.read === 'setting')
          readers[inputs[n * layout.inputs.length + k]].add(compiled.index)
  }
  return readers.map((indexes) => [...indexes])
}

/** Fills the tables of a block: what its instances read and change, as addresses. */
function bind(memory: KernelMemory, model: Model, block: Block, sumLines: Int32Array): void {
  const { at } = memory
  const { compiled, inputs, gathers, names, firstFlux, process } = block
  const layout = layoutOf(process)
  const happens = process.event === true
  const fluxes = happens ? model.eventFluxes : model.fluxes
  const slopes = compiled.slow || happens ? at.slope : at.quickSlope
  const changed = (state: number): number =>
    memory.shape.tolerance[state] > 0 ? memory.lineOf(slopes, state) : memory.nowhere(at.slope)
  const sumAt = (sum: number): number => at.gathered + row * sumLines[sum]
  const addressOf = (place: Place, n: number): number => {
    if (place === 'volume') return at.settings
    if ('gather' in place) return sumAt(gathers[n * layout.gathers.length + place.gather])
    const flux = (k: number): number => firstFlux + n * layout.fluxes.length + k
    if ('from' in place) return changed(fluxes[flux(place.from)].from)
    if ('to' in place) return changed(fluxes[flux(place.to)].to)
    const index = inputs[n * layout.inputs.length + place.input]
    const input = layout.inputs[place.input]
    if (input.from === 'parameter') return at.parameters + row * index
    switch (input.read.read) {
      case 'amount':
      case 'concentration':
      case 'state':
        return memory.lineOf(at.stage, index)
      case 'setting':
        return at.settings + row * index
      case 'gathered':
        return sumAt(index)
    }
  }
  const each = (places: readonly Place[]): number =>
    memory.table(names.flatMap((_, n) => places.map((place) => addressOf(place, n))))
  const once = (places: readonly Place[]): number => memory.table(places.map((place) => addressOf(place, 0)))
  const room = (numbers: number): number => memory.take(row * numbers)
  const entries = [
    names.length,
    once(compiled.liveShared),
    room(compiled.heldShared),
    each(compiled.liveEach),
    room(compiled.heldEach * names.length),
    room(compiled.kept * names.length),
    once(compiled.fixedShared),
    each(compiled.fixedEach),
    // The flows of a block lie side by side: all of them are quick, or none.
    happens ? at.eventFlows + row * firstFlux : at.flows + row * (memory.flowLines[firstFlux] ?? 0),
    at.pulls + 2 * row * (memory.shape.exchanges ?? []).filter((flow) => flow < firstFlux).length,
  ]
  memory.integers(at.blocks + 40 * compiled.index, entries.length).set(entries)
}
