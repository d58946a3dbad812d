import { type Account, account, type PlainState } from '../declare/account.ts'

/** The atoms of a cultivated bed. */
export const bedOfAlgae = (id: string): Account =>
  account('inside', `cultivated.${id}`, `Algae of the ${id}`, ['N', 'P', 'C'])

/** How long a bed has been short of light; light wakes it up again. */
export const darkDays = (id: string): PlainState => ({
  id: `dark.${id}`,
  title: `Days in the dark of the ${id}`,
  unit: 'd',
})
