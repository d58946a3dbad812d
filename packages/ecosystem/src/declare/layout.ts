import type { Atom } from '../ledger-types.ts'
import type { Account, PlainState } from './account.ts'
import type { Process } from './process.ts'
import type { Chosen, ParameterRead, Read } from './read.ts'

/** Where a name of a formula comes from, in the order in which the kernel finds it. */
export type Input =
  | { readonly name: string; readonly from: 'read'; readonly read: Read<unknown> }
  | { readonly name: string; readonly from: 'parameter'; readonly parameter: ParameterRead<unknown> }

/** One number that a process works out for an instance: a flow between accounts, or a rate of a state. */
export interface FluxLayout {
  readonly atom: Atom | null
  readonly from: Chosen<unknown, Account> | null
  readonly to: Chosen<unknown, Account> | null
  readonly state: Chosen<unknown, PlainState | undefined> | null
  /** Text of the formula; names that begin with $ are amounts that a carry moves. */
  readonly rate: string
  readonly bothWays: boolean
}

export interface Layout {
  readonly inputs: readonly Input[]
  readonly gathers: readonly {
    readonly name: string
    readonly sum: string
    readonly unit: string
    readonly key: (instance: unknown) => string
  }[]
  readonly terms: readonly { readonly name: string; readonly is: string; readonly unit: string }[]
  readonly fluxes: readonly FluxLayout[]
}

/** Turns the transfers of a declaration into single fluxes, and fixes the order of everything it reads. */
export function layoutOf(declaration: Process): Layout {
  const inputs: Input[] = [
    ...Object.entries(declaration.reads).map(([name, read]): Input => ({ name, from: 'read', read })),
    ...Object.entries(declaration.parameters).map(
      ([name, parameter]): Input => ({ name, from: 'parameter', parameter }),
    ),
  ]
  const fluxes: FluxLayout[] = []
  declaration.transfers.forEach((transfer, index) => {
    switch (transfer.kind) {
      case 'move':
        fluxes.push({ ...transfer, state: null })
        break
      case 'change':
        fluxes.push({
          atom: null,
          from: null,
          to: null,
          state: transfer.state,
          rate: transfer.rate,
          bothWays: true,
        })
        break
      case 'carry':
        for (const atom of transfer.atoms) {
          const name = `$${index}${atom}`
          inputs.push({
            name,
            from: 'read',
            read: { read: 'amount', account: transfer.from, atom, unit: 'µmol' },
          })
          fluxes.push({
            atom,
            from: transfer.from,
            to: transfer.to,
            state: null,
            rate: `(${transfer.rate}) * ${name}`,
            bothWays: false,
          })
        }
        break
      case 'split': {
        const given = transfer.into.filter((part) => part.share !== 'rest').map((part) => `(${part.share})`)
        for (const part of transfer.into) {
          const share =
            part.share === 'rest'
              ? `(1 - (${given.length > 0 ? given.join(' + ') : '0'}))`
              : `(${part.share})`
          fluxes.push({
            atom: transfer.atom,
            from: transfer.from,
            to: part.to,
            state: null,
            rate: `(${transfer.rate}) * ${share}`,
            bothWays: false,
          })
        }
      }
    }
  })
  return {
    inputs,
    gathers: Object.entries(declaration.gathers ?? {}).map(([name, gather]) => ({ name, ...gather })),
    terms: Object.entries(declaration.terms ?? {}).map(([name, term]) => ({ name, ...term })),
    fluxes,
  }
}

export const chosen = <T>(choice: Chosen<unknown, T>, instance: unknown): T =>
  typeof choice === 'function' ? (choice as (instance: unknown) => T)(instance) : choice

/** What is the same for every instance; undefined where each has its own. */
export const chosenOnce = <T>(choice: Chosen<unknown, T>): T | undefined =>
  typeof choice === 'function' ? undefined : choice
