import { kernel } from 'virtual:holdfast-kernel'
import { catalogueAlone, type FactsOfSystem } from '@holdfast/facts'
import { convert } from '@holdfast/quantities'
import {
  type Account,
  chosen,
  type Input,
  layoutOf,
  type PlainState,
  type Process,
} from '../declare/index.ts'
import { events } from '../events/index.ts'
import type { Atom } from '../ledger-types.ts'
import { processes } from '../processes/index.ts'
import { volumeOf, waterVolume } from '../processes/readings.ts'
import type { System } from '../system.ts'
import type { Block, Flux, Model, Parameter, StateEntry } from './model.ts'
import { notModelled } from './not-modelled.ts'

/** Numbers things in the order in which they are first named. */
class Register<T> {
  readonly entries: T[] = []
  private readonly indexes = new Map<string, number>()

  indexOf(id: string, make: () => T): number {
    const known = this.indexes.get(id)
    if (known !== undefined) return known
    this.indexes.set(id, this.entries.length)
    return this.entries.push(make()) - 1
  }
}

/**
 * Binds the declarations to a system. What a system has decides which processes there are; the answer
 * depends on the system alone, so that variants of one system stay comparable.
 *
 * @param facts  the catalogue, with the keeper's own numbers where there are some
 */
export function assemble(system: System, facts: FactsOfSystem = catalogueAlone): Model {
  const states = new Register<StateEntry>()
  const settings = new Register<{ id: string; value: number }>()
  const parameters = new Register<Parameter>()
  const gathered = new Register<string>()
  const factsAsked = new Set<string>()
  const asked: FactsOfSystem = {
    ...facts,
    fact: (id) => facts.fact(note(id)),
    typical: (id) => facts.typical(note(id)),
  }
  const note = (id: string): string => {
    factsAsked.add(id)
    return id
  }
  settings.indexOf(waterVolume, () => ({ id: waterVolume, value: volumeOf(system) }))

  const atomsIn = (account: Account, atom: Atom): number => {
    if (!account.atoms.includes(atom))
      throw new Error(`Account ${account.id} holds ${account.atoms.join(', ')} and no ${atom}.`)
    return states.indexOf(`${account.id}/${atom}`, () => ({ kind: 'atoms', account, atom }))
  }
  const plain = (state: PlainState): number => states.indexOf(state.id, () => ({ kind: 'plain', state }))
  const plainIfAny = (state: PlainState | undefined): number => (state ? plain(state) : -1)

  const inputIndex = (input: Input, instance: unknown): number => {
    if (input.from === 'parameter') {
      const { fact, unit, known } = input.parameter
      const id = chosen(fact, instance)
      const band = known?.(instance)
      // Two feeds of one kind may be told apart.
      const key = band ? `${id} as the keeper says, ${Object.values(band).join(' ')}` : `${id} in ${unit}`
      return parameters.indexOf(key, () => {
        if (band) return { id: key, fact: id, unit, band, factor: 1, known: true }
        const entry = asked.fact(id)
        const factor = convert(1, entry.unit, unit)
        return {
          id: key,
          fact: id,
          unit,
          band: { low: entry.low * factor, typical: entry.typical * factor, high: entry.high * factor },
          factor,
          known: false,
        }
      })
    }
    const { read } = input
    switch (read.read) {
      case 'amount':
      case 'concentration':
        return atomsIn(chosen(read.account, instance), read.atom)
      case 'state':
        return plain(chosen(read.state, instance))
      case 'setting': {
        const id = chosen(read.id, instance)
        return settings.indexOf(id, () => ({ id, value: read.value(instance, asked) }))
      }
      case 'gathered': {
        const id = `${read.gather} ${read.key(instance)}`
        return gathered.indexOf(id, () => id)
      }
    }
  }

  const bind = (declaration: Process, fluxes: Flux[]): Block | undefined => {
    const instances = declaration.each(system, asked)
    if (instances.length === 0) return undefined
    const layout = layoutOf(declaration)
    const inputs: number[] = []
    const gathers: number[] = []
    const firstFlux = fluxes.length
    for (const { name, of } of instances) {
      for (const input of layout.inputs) inputs.push(inputIndex(input, of))
      for (const gather of layout.gathers) {
        const id = `${gather.name} ${gather.key(of)}`
        gathers.push(gathered.indexOf(id, () => id))
      }
      for (const flux of layout.fluxes) {
        const { atom } = flux
        const place = (account: typeof flux.from): number =>
          account && atom ? atomsIn(chosen(account, of), atom) : -1
        fluxes.push({
          process: declaration,
          instance: name,
          atom,
          from: place(flux.from),
          to: flux.state ? plainIfAny(chosen(flux.state, of)) : place(flux.to),
          bothWays: flux.bothWays,
        })
      }
    }
    return {
      process: declaration,
      compiled: kernel[declaration.id] ?? missing(declaration.id),
      names: instances.map(({ name }) => name),
      instances: instances.map(({ of }) => of),
      inputs: Int32Array.from(inputs),
      gathers: Int32Array.from(gathers),
      firstFlux,
    }
  }

  const fluxes: Flux[] = []
  const eventFluxes: Flux[] = []
  const blocks = processes
    .map((declaration) => bind(declaration, fluxes))
    .filter((block) => block !== undefined)
  const eventBlocks = events
    .map((declaration) => bind(declaration, eventFluxes))
    .filter((block) => block !== undefined)
  return {
    system,
    facts,
    factsAsked,
    states: states.entries,
    settings: {
      ids: settings.entries.map(({ id }) => id),
      values: Float64Array.from(settings.entries, ({ value }) => value),
    },
    parameters: parameters.entries,
    gathered: gathered.entries.length,
    blocks,
    fluxes,
    events: new Map(eventBlocks.map((block) => [block.process.id, block])),
    eventFluxes,
    notModelled: notModelled(system, facts),
    volume_L: volumeOf(system),
  }
}

function missing(id: string): never {
  throw new Error(`Process ${id} is declared and not compiled: build again.`)
}

/** The parameters at the typical value of every fact. */
export const typicalParameters = (model: Model): Float64Array =>
  Float64Array.from(model.parameters, ({ band }) => band.typical)
