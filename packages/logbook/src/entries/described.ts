import { type About, type Blank, choicesOf } from './blank.ts'

type Offered = Pick<Blank, 'holds' | 'choices' | 'open'>

/** The surfaces of the system, or any word while none is described. */
export const surfacesOf = ({ system }: About): Offered =>
  offered(
    (system?.surfaces ?? []).map(({ id }) => id),
    false,
  )

/** The vessels of the system, or any word while none is described. */
export const vesselsOf = ({ system }: About): Offered =>
  offered(
    (system?.vessels ?? []).map(({ id }) => id),
    false,
  )

/** Kinds of algae, those that the description names first. */
function algaeOf({ system, algae }: About): Offered {
  const here = choicesOf((system?.algae ?? []).map(({ kind }) => kind))
  if (algae === undefined) return { holds: 'choice', choices: here, open: true }
  const known = new Map([...here, ...algae].map((choice) => [choice.value, choice]))
  return { holds: 'choice', choices: [...known.values()] }
}

/** One kind of algae on one surface. */
export const standBlanks = (about: About): readonly Blank[] => [
  {
    name: 'surface',
    label: 'Surface',
    required: true,
    hint: 'A surface of the system',
    ...surfacesOf(about),
  },
  { name: 'algae', label: 'Algae', required: true, hint: 'Such as green hair algae', ...algaeOf(about) },
]

/** Animals that the description names, the keeper's own among them; others may come. */
export const taxaOf = ({ system }: About): Offered =>
  offered(
    [
      ...(system?.animals ?? []).map(({ kind, taxon }) => taxon ?? kind),
      ...(system?.own_animals ?? []).map(({ taxon }) => taxon),
    ],
    true,
  )

function offered(values: readonly string[], open: boolean): Offered {
  return { holds: 'choice', choices: choicesOf(values), open: open || values.length === 0 }
}
