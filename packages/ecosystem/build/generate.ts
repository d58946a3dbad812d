import type { CompiledProcess, Place } from 'virtual:holdfast-kernel'
import {
  type Account,
  type Chosen,
  chosenOnce,
  type Layout,
  layoutOf,
  type PlainState,
  type Process,
} from '../src/declare/index.ts'
import { neededNames } from './names.ts'
import { parse } from './parse.ts'
import { pullsOf } from './pulls.ts'
import { madeOf, type Value, type ValueGraph, valueGraph } from './value-graph.ts'

/**
 * Writes the part of the kernel that follows from the declarations, in AssemblyScript: for each process
 *
 * - `fixed`: what parameters and settings alone give, worked out when they change and kept in memory;
 * - `sums`: what it adds to gathered sums;
 * - `rates`: its fluxes, added to the net rates of the accounts at both ends.
 *
 * It runs when the project is built; what ships makes no code.
 */
export function generateKernel(processes: readonly Process[]): {
  readonly source: string
  readonly compiled: Readonly<Record<string, CompiledProcess>>
} {
  checkOrder(processes)
  const written = processes.map((declaration, index) => writeProcess(declaration, index))
  const happening = processes.flatMap(({ event }, index) => (event ? [index] : []))
  const lasting = processes.flatMap(({ event }, index) => (event ? [] : [index]))
  const slow = lasting.filter((index) => written[index].compiled.slow)
  const quick = lasting.filter((index) => !written[index].compiled.slow)
  const sumsRead = (index: number): readonly string[] =>
    Object.values(processes[index].reads).flatMap((read) => (read.read === 'gathered' ? [read.gather] : []))
  const readingSums = happening.filter((index) => sumsRead(index).length > 0)
  const readByQuick = new Set(quick.flatMap(sumsRead))
  const ahead = slow.filter((index) =>
    Object.keys(processes[index].gathers ?? {}).some((sum) => readByQuick.has(sum)),
  )
  const summing = (indexes: readonly number[]): readonly string[] =>
    indexes
      .filter((index) => written[index].compiled.sums > 0)
      .map((index) => `sums${index}(${block(index)})`)
  const rating = (indexes: readonly number[]): readonly string[] =>
    indexes.map((index) => `rates${index}(${block(index)})`)
  const block = (index: number): string => `block(${index})`
  const choice = (what: string, indexes: readonly number[]): readonly string[] => [
    'switch (index) {',
    ...indexes.map((index) => `  case ${index}: ${what}${index}(${block(index)}); break`),
    '}',
  ]
  const source = `
import * as F from './forms'
import { block, books } from './memory'
import { add, both, div, gain, mul, negative, sub } from './pair'
${written.map(({ code }) => code).join('\n')}
/** Works out what parameters and settings alone give, for one process. */
export function settle(index: i32): void {
  ${choice('fixed', [...lasting, ...happening]).join('\n  ')}
}

/** Slow processes at the states of the stage; they may read the sums of quick ones. */
export function slowProcesses(): void {
  allSums()
  ${rating(slow).join('\n  ')}
}

/** One slow process at the states of the stage, by the sums as they are. */
export function slowProcess(index: i32): void {
  ${choice('rates', slow).join('\n  ')}
}

/** Quick processes at the states of the stage. */
export function quickProcesses(): void {
  ${[...summing(quick), ...rating(quick)].join('\n  ')}
}

/** Sums by slow processes that quick ones read, at the states of the stage. */
export function sumsForQuick(): void {
  ${summing(ahead).join('\n  ')}
}

/** What one event moves, at the states of the stage. */
export function eventProcess(index: i32): void {
  ${choice('rates', happening).join('\n  ')}
}

/** Whether an event reads sums. */
export function eventReadsSums(index: i32): bool {
  return ${readingSums.map((index) => `index === ${index}`).join(' || ') || 'false'}
}

/** The sums of all processes, at the states of the stage. */
export function allSums(): void {
  ${summing(lasting).join('\n  ')}
}
`
  return { source, compiled: Object.fromEntries(written.map(({ id, compiled }) => [id, compiled])) }
}

interface Written {
  readonly id: string
  readonly code: string
  readonly compiled: CompiledProcess
}

function writeProcess(declaration: Process, index: number): Written {
  const layout = layoutOf(declaration)
  checkNames(declaration, layout)
  const graph = valueGraph(layout)
  const { fluxes, gathers, values } = graph
  const memory = new Memory(graph)
  const inRates = madeOf(fluxes, (value) => memory.holds(value) || memory.keeps(value))
  const inSums = madeOf(gathers, (value) => memory.holds(value))
  const inFixed = madeOf(memory.held)
  const ends = endsOf(layout)
  const sums = gathers.map((value, k) => `gain(${memory.each('live', { gather: k })}, ${nameOf(value)})`)
  const body = (wanted: ReadonlySet<Value>, each: boolean, text: (value: Value) => string): string =>
    values
      .filter((value) => wanted.has(value) && value.each === each && value.type !== 'number')
      .map((value) => `const ${value.name} = ${text(value)}`)
      .join('\n')
  const store = (at: string, list: readonly Value[]): readonly string[] =>
    list.map((value, k) => `v128.store(${at}, ${nameOf(value)}, ${16 * k})`)
  const fixedText = (value: Value): string =>
    value.type === 'found' ? `v128.load(${memory.of('fixed', value.each, value.found)})` : textOf(value)
  const liveText = (value: Value): string => {
    if (memory.holds(value)) return memory.heldAt(value)
    return value.type === 'found' ? `v128.load(${memory.of('live', value.each, value.found)})` : textOf(value)
  }
  const ratesText = (value: Value): string => (memory.keeps(value) ? memory.keptAt(value) : liveText(value))

  // Written before the tables are read off: writing them is what fills them.
  const fixedShared = body(inFixed, false, fixedText)
  const fixedEach = body(inFixed, true, fixedText)
  const sumsShared = body(inSums, false, liveText)
  const sumsEach = body(inSums, true, liveText)
  const ratesShared = body(inRates, false, ratesText)
  const ratesEach = body(inRates, true, ratesText)
  const hubs = ends.filter(({ shared }) => shared)
  const owned = ends.filter(({ shared }) => !shared)
  const hubAt = hubs.map(({ place }) => memory.of('live', false, place))
  const gained = owned.map(
    ({ place, terms }) => `gain(${memory.of('live', true, place)}, ${sumOf(terms, fluxes)})`,
  )
  const flux = (k: number): string => nameOf(fluxes[k])
  const slow = declaration.slow === true
  const pulls = slow || declaration.event ? [] : pullsOf(layout, graph)
  const next = (kept: boolean): string => `
    live += ${4 * memory.tables.liveEach.length}
    held += ${16 * memory.heldEach.length}${kept ? `\n    kept += ${16 * memory.kept.length}` : ''}`
  const open = `const count = load<i32>(at)
  if (count == 0) return`
  const openLive = `${open}
  const liveShared = load<usize>(at, 4)
  const heldShared = load<usize>(at, 8)
  let live = load<usize>(at, 12)
  let held = load<usize>(at, 16)
  let kept = load<usize>(at, 20)`
  const code = `
/** ${declaration.id} */
function fixed${index}(at: usize): void {
  ${open}
  const fixedShared = load<usize>(at, 24)
  const heldShared = load<usize>(at, 8)
  let fixed = load<usize>(at, 28)
  let held = load<usize>(at, 16)
  ${fixedShared}
  ${store('heldShared', memory.heldShared).join('\n  ')}
  for (let n = 0; n < count; n++) {
    ${fixedEach}
    ${store('held', memory.heldEach).join('\n    ')}
    fixed += ${4 * memory.tables.fixedEach.length}
    held += ${16 * memory.heldEach.length}
  }
}
${
  gathers.length === 0
    ? ''
    : `function sums${index}(at: usize): void {
  ${openLive}
  ${sumsShared}
  for (let n = 0; n < count; n++) {
    ${sumsEach}
    ${sums.join('\n    ')}
    ${store('kept', memory.kept).join('\n    ')}
    ${next(true)}
  }
}`
}
function rates${index}(at: usize): void {
  ${openLive}
  let flows = load<usize>(at, 32)${pulls.length > 0 ? '\n  let pulls = load<usize>(at, 36)' : ''}
  ${ratesShared}
  ${hubs.map((_, k) => `let hub${k} = both(0)`).join('\n  ')}
  for (let n = 0; n < count; n++) {
    ${ratesEach}
    ${hubs
      .flatMap(({ terms }, k) =>
        terms.map(({ sign, flux: of }) => `hub${k} = ${sign > 0 ? 'add' : 'sub'}(hub${k}, ${flux(of)})`),
      )
      .join('\n    ')}
    ${gained.join('\n    ')}
    ${slow ? 'if (books) {' : '{'}
      ${store('flows', fluxes).join('\n      ')}
      flows += ${16 * fluxes.length}
    }
    ${pulls.join('\n    ')}
    ${next(true)}
  }
  ${hubAt.map((at, k) => `gain(${at}, hub${k})`).join('\n  ')}
}
`
  return {
    id: declaration.id,
    code,
    compiled: {
      index,
      slow,
      ...memory.tables,
      heldShared: memory.heldShared.length,
      heldEach: memory.heldEach.length,
      kept: memory.kept.length,
      sums: gathers.length,
      summed: [...madeOf(gathers)].flatMap((value) =>
        value.type === 'found' && value.found !== 'volume' ? [value.found.input] : [],
      ),
      fluxes: fluxes.length,
    },
  }
}

/** Where the values of a process lie: what is held from settings to settings, and tables of addresses. */
class Memory {
  readonly tables = {
    fixedShared: [] as Place[],
    fixedEach: [] as Place[],
    liveShared: [] as Place[],
    liveEach: [] as Place[],
  }
  /** Fixed values that live ones are made of. */
  readonly held: readonly Value[]
  readonly heldShared: readonly Value[]
  readonly heldEach: readonly Value[]
  /** Values that both the sums and the rates need. */
  readonly kept: readonly Value[]

  constructor({ values, fluxes, gathers }: ValueGraph) {
    const used = new Set([
      ...fluxes,
      ...gathers,
      ...values.filter(({ live }) => live).flatMap(({ of }) => of),
    ])
    this.held = values.filter((value) => !value.live && value.type !== 'number' && used.has(value))
    this.heldShared = this.held.filter(({ each }) => !each)
    this.heldEach = this.held.filter(({ each }) => each)
    const summed = madeOf(gathers)
    const both = (value: Value): boolean => value.live && value.each && summed.has(value)
    const reached = madeOf(fluxes, both)
    this.kept = values.filter((value) => both(value) && reached.has(value))
  }

  readonly holds = (value: Value): boolean => this.held.includes(value)
  readonly keeps = (value: Value): boolean => this.kept.includes(value)
  heldAt(value: Value): string {
    return value.each
      ? `v128.load(held, ${16 * this.heldEach.indexOf(value)})`
      : `v128.load(heldShared, ${16 * this.heldShared.indexOf(value)})`
  }
  keptAt(value: Value): string {
    return `v128.load(kept, ${16 * this.kept.indexOf(value)})`
  }
  each(when: 'fixed' | 'live', place: Place): string {
    return this.of(when, true, place)
  }
  /** Code of the address of a place, which gets its line in a table. */
  of(when: 'fixed' | 'live', each: boolean, place: Place): string {
    const table = this.tables[`${when}${each ? 'Each' : 'Shared'}`]
    const line = JSON.stringify(place)
    const known = table.findIndex((other) => JSON.stringify(other) === line)
    const at = known >= 0 ? known : table.push(place) - 1
    return `load<usize>(${when}${each ? '' : 'Shared'}, ${4 * at})`
  }
}

interface End {
  /** One account for all instances. */
  readonly shared: boolean
  readonly place: Place
  readonly terms: { readonly sign: 1 | -1; readonly flux: number }[]
}

/** The accounts and states inside that the fluxes of a process change, each once. */
function endsOf(layout: Layout): readonly End[] {
  const ends = new Map<unknown, Map<string, End>>()
  const list: End[] = []
  const put = (
    choice: Chosen<unknown, Account | PlainState | undefined>,
    atom: string,
    place: Place,
    sign: 1 | -1,
    flux: number,
  ): void => {
    const one = chosenOnce(choice)
    if (one && 'side' in one && one.side === 'outside') return
    const key = one?.id ?? choice
    const byAtom = ends.get(key) ?? new Map<string, End>()
    ends.set(key, byAtom)
    const known = byAtom.get(atom)
    if (known) {
      known.terms.push({ sign, flux })
      return
    }
    const end = { shared: one !== undefined, place, terms: [{ sign, flux }] }
    byAtom.set(atom, end)
    list.push(end)
  }
  layout.fluxes.forEach(({ atom, from, to, state }, k) => {
    if (from) put(from, atom ?? '', { from: k }, -1, k)
    const into = to ?? state
    if (into) put(into, atom ?? '', { to: k }, 1, k)
  })
  return list
}

const sumOf = (terms: End['terms'], fluxes: readonly Value[]): string =>
  terms.reduce((sum, { sign, flux }) => {
    const value = nameOf(fluxes[flux])
    if (sum === '') return sign > 0 ? value : `negative(${value})`
    return `${sign > 0 ? 'add' : 'sub'}(${sum}, ${value})`
  }, '')

const operations = { '+': 'add', '-': 'sub', '*': 'mul', '/': 'div' } as const

const nameOf = (value: Value): string => (value.type === 'number' ? `both(${value.number})` : value.name)

function textOf(value: Value): string {
  const of = value.of.map(nameOf).join(', ')
  switch (value.type) {
    case 'number':
    case 'found':
      return nameOf(value)
    case 'negative':
      return `negative(${of})`
    case 'operation':
      return `${operations[value.operator]}(${of})`
    case 'form':
      return `F.${value.form}(${of})`
  }
}

/** @throws Error when a sum is made of another that is not made before it, or is made by slow and quick processes */
function checkOrder(processes: readonly Process[]): void {
  const summed = (slow: boolean): ReadonlySet<string> =>
    new Set(processes.flatMap((one) => ((one.slow === true) === slow ? Object.keys(one.gathers ?? {}) : [])))
  const ofBoth = [...summed(true)].filter((sum) => summed(false).has(sum))
  if (ofBoth.length > 0)
    throw new Error(
      `Slow and quick processes both add to ${ofBoth.join(', ')}: they do so at different times.`,
    )
  for (const [place, declaration] of processes.entries()) {
    const layout = layoutOf(declaration)
    const used = neededNames(
      layout,
      layout.gathers.map(({ sum }) => parse(sum)),
    )
    for (const { name, ...input } of layout.inputs) {
      if (!used.has(name) || input.from !== 'read' || input.read.read !== 'gathered') continue
      const { gather } = input.read
      const late = processes.slice(place).find(({ gathers }) => gathers && gather in gathers)
      if (late)
        throw new Error(
          `Process ${declaration.id} sums up "${gather}", to which ${late.id} still adds: list it after that.`,
        )
    }
  }
}

/** @throws Error when a formula names what is not declared, or something declared is never used */
function checkNames(declaration: Process, layout: Layout): void {
  const declared = [...layout.inputs.map((input) => input.name), ...layout.terms.map((term) => term.name)]
  const twice = declared.filter((name, k) => declared.indexOf(name) !== k)
  const formulas = [...layout.fluxes.map(({ rate }) => rate), ...layout.gathers.map(({ sum }) => sum)]
  const used = neededNames(layout, formulas.map(parse))
  const unknown = [...used].filter((name) => !declared.includes(name))
  const idle = declared.filter((name) => !used.has(name))
  const problems = [
    ...twice.map((name) => `"${name}" is declared twice`),
    ...unknown.map((name) => `"${name}" is used and not declared`),
    ...idle.map((name) => `"${name}" is declared and never used`),
  ]
  if (problems.length > 0) throw new Error(`Process ${declaration.id}: ${problems.join('; ')}.`)
}
