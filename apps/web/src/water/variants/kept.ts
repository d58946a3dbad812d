import { keep, kept, type Store } from '../../shell/browser-store.ts'
import { isSame, type Settings, settings } from '../settings.ts'

/** Levers that were set somehow and are kept by a name, to be compared. */
export interface Variant {
  readonly mark: Mark
  readonly name: string
  readonly set: Settings
}

/** Told apart in the pictures by the letter and by the dashes of the line. */
export const marks = ['A', 'B', 'C'] as const
export type Mark = (typeof marks)[number]

/** What is wrong with a name or a variant that shall be kept, in words. */
export type Kept = { readonly variants: readonly Variant[] } | { readonly issue: string }

/** The variants with one more; its letter is the first that is free. */
export function withVariant(variants: readonly Variant[], named: string, set: Settings): Kept {
  const name = named.trim()
  const mark = marks.find((one) => variants.every((variant) => variant.mark !== one))
  const same = variants.find((variant) => isSame(variant.set, set))
  if (mark === undefined)
    return {
      issue: `Variants: ${marks.length} are kept, and more could not be told apart. Remove one first.`,
    }
  if (name === '') return { issue: 'Name: nothing is typed. Give a few words, such as half the feed.' }
  if (variants.some((variant) => variant.name === name))
    return { issue: `Name: "${name}" is kept already. Give another, or remove that one.` }
  if (same) return { issue: `Variant: "${same.name}" has the levers in the same places. Move one first.` }
  const all = [...variants, { mark, name, set }]
  return { variants: all.sort((a, b) => marks.indexOf(a.mark) - marks.indexOf(b.mark)) }
}

export const without = (variants: readonly Variant[], mark: Mark) =>
  variants.filter((variant) => variant.mark !== mark)

const nameOf = (system: string) => `holdfast.variants.${system}`

/** @returns false where the browser did not keep them */
export const keepVariants = (system: string, variants: readonly Variant[], store?: Store): boolean =>
  keep(nameOf(system), variants, store)

/** What this browser kept, perhaps by an older page: what cannot be read as a variant is left out. */
export function variantsKept(system: string, store?: Store): readonly Variant[] {
  const found = kept(nameOf(system), store)
  return Array.isArray(found) ? found.filter(isVariant) : []
}

function isVariant(value: unknown): value is Variant {
  if (typeof value !== 'object' || value === null) return false
  const set: unknown = Reflect.get(value, 'set')
  return (
    marks.some((mark) => mark === Reflect.get(value, 'mark')) &&
    typeof Reflect.get(value, 'name') === 'string' &&
    typeof set === 'object' &&
    set !== null &&
    settings.every((key) => Number.isFinite(Reflect.get(set, key)))
  )
}
