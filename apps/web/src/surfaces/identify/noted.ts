import { type Answers, answerable } from '@holdfast/identification'

/** What was noted of a growth so far, in the order in which it was said. */
export interface Noted {
  readonly answers: Answers
  /** Traits that cannot be told, and are not asked for again. */
  readonly passedOver: readonly string[]
}

/** As it stands in the address, so that it can be shared and outlives a reload. */
export interface NotedText {
  /** @example colour.brown,form.dust_film */
  readonly noted: string | undefined
  readonly unknown: string | undefined
}

export const nothingNoted: Noted = { answers: {}, passedOver: [] }

/** Notes a state; a trait noted before is noted anew. */
export const note = ({ answers, passedOver }: Noted, trait: string, state: string): Noted => ({
  answers: { ...without(answers, trait), [trait]: state },
  passedOver: passedOver.filter((one) => one !== trait),
})

export const passOver = ({ answers, passedOver }: Noted, trait: string): Noted => ({
  answers: without(answers, trait),
  passedOver: [...passedOver.filter((one) => one !== trait), trait],
})

/** Neither noted nor passed over any more: it may be asked again. */
export const takeBack = ({ answers, passedOver }: Noted, trait: string): Noted => ({
  answers: without(answers, trait),
  passedOver: passedOver.filter((one) => one !== trait),
})

export const textOf = ({ answers, passedOver }: Noted): NotedText => ({
  noted: orNothing(
    Object.entries(answers)
      .map(([trait, state]) => `${trait}.${state}`)
      .join(','),
  ),
  unknown: orNothing(passedOver.join(',')),
})

/** Reads an address; what is no trait or state of the key any more is passed by. */
export function notedIn({ noted, unknown }: Readonly<Record<keyof NotedText, string | null>>): Noted {
  const states = new Map(
    answerable().map(({ key, states }) => [key, new Set(states.map((one) => one.key))] as const),
  )
  const answers = (noted ?? '').split(',').flatMap((text) => {
    const [trait = '', state = ''] = text.split('.')
    return states.get(trait)?.has(state) ? [[trait, state] as const] : []
  })
  return {
    answers: Object.fromEntries(answers),
    passedOver: (unknown ?? '').split(',').filter((trait) => states.has(trait)),
  }
}

const orNothing = (text: string): string | undefined => (text === '' ? undefined : text)

const without = (answers: Answers, trait: string): Answers =>
  Object.fromEntries(Object.entries(answers).filter(([key]) => key !== trait))
