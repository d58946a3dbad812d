import type { Chance, Identification, Verdict } from '@holdfast/identification'

/** A finding as one document; keys stay, new ones may come. */
export const foundAsJson = (found: Identification): unknown => ({
  kinds: kindsOf(found.chances),
  ends: found.ends.replace(' ', '_'),
  response: responseOf(found),
  slime_chance: found.slime,
  hands_off: found.handsOff,
  suspect: found.suspect?.key ?? null,
  ask_next: found.next ?? null,
  cautions: found.cautions,
  look_alikes: found.lookAlikes.map(({ from, ...rest }) => ({ kind: from.key, ...rest })),
  finer: found.finer ? { kinds: kindsOf(found.finer.chances), response: responseOf(found.finer) } : null,
})

const kindsOf = (chances: readonly Chance[]) =>
  chances.map(({ key, title, chance }) => ({ kind: key, title, chance }))

const responseOf = ({ best: { response, chance, cost } }: Verdict) => ({
  key: response.key,
  title: response.title,
  does: response.does,
  chance,
  expected_cost_months: cost,
})
