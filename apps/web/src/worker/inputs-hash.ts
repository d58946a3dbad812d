import type { Question } from './protocol.ts'

/**
 * Names what a question rests on, so that an answer can be told from an answer to other inputs. How
 * many members work on it is left out: a coarse answer to the same inputs is rough, not old.
 */
export function inputsHash(question: Question): string {
  const { outlook, firstMembers: _first, ...asked } = question
  const { members: _members, ...rests } = outlook
  const parts = Object.entries(rests).filter(([, part]) => part !== undefined)
  const named = parts.map(([key, part]) => [key, nameOf(part)] as const).sort(([a], [b]) => (a < b ? -1 : 1))
  return fnv1aBothWays(JSON.stringify([asked, named], sorted))
}

/** System and log are the same objects from one question of a page to the next, and are never changed. */
const names = new WeakMap<object, string>()

function nameOf(part: unknown): string {
  if (typeof part !== 'object' || part === null) return JSON.stringify(part)
  const name = names.get(part) ?? fnv1aBothWays(JSON.stringify(part, sorted))
  names.set(part, name)
  return name
}

/** Keys in one order, so that equal inputs written differently have one name. */
function sorted(_key: string, value: unknown): unknown {
  if (value === null || typeof value !== 'object' || Array.isArray(value)) return value
  return Object.fromEntries(Object.entries(value).sort(([a], [b]) => (a < b ? -1 : 1)))
}

/**
 * FNV-1a, 32 bits (Fowler, Noll & Vo; constants from memory), once forwards and once backwards. Not a
 * cryptographic hash: the page may be served over plain HTTP, where crypto.subtle is absent, and nobody
 * attacks their own lever. It must be quick, since a lever is hashed at every step of a finger.
 */
function fnv1aBothWays(text: string): string {
  let forwards = 0x811c9dc5
  let backwards = 0x811c9dc5
  for (let i = 0, j = text.length - 1; j >= 0; i += 1, j -= 1) {
    forwards = Math.imul(forwards ^ text.charCodeAt(i), 0x01000193)
    backwards = Math.imul(backwards ^ text.charCodeAt(j), 0x01000193)
  }
  const hex = (lane: number) => (lane >>> 0).toString(16).padStart(8, '0')
  return hex(forwards) + hex(backwards)
}
