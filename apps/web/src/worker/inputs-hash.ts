import type { Question } from './protocol.ts'

/**
 * Names what a question rests on, so that an answer can be told from an answer to other inputs. How
 * many members work on it is left out: a coarse answer to the same inputs is rough, not old.
 */
export function inputsHash(question: Question): string {
  const { members: _members, ...rests } = question.outlook
  const span = question.kind === 'ledger' ? question.span : null
  return fnv1a64(JSON.stringify([question.kind, span, rests], sorted))
}

/** Keys in one order, so that equal inputs written differently have one name. */
function sorted(_key: string, value: unknown): unknown {
  if (value === null || typeof value !== 'object' || Array.isArray(value)) return value
  return Object.fromEntries(Object.entries(value).sort(([a], [b]) => (a < b ? -1 : 1)))
}

/**
 * FNV-1a, 64 bits (Fowler, Noll & Vo; constants from memory). Not a cryptographic hash: the page may
 * be served over plain HTTP, where crypto.subtle is absent, and nobody attacks their own lever.
 */
function fnv1a64(text: string): string {
  let hash = 0xcbf29ce484222325n
  for (const byte of new TextEncoder().encode(text)) {
    hash = BigInt.asUintN(64, (hash ^ BigInt(byte)) * 0x100000001b3n)
  }
  return hash.toString(16).padStart(16, '0')
}
