import { type Account, account, type PlainState } from '../declare/account.ts'

/** The bodies of all animals of a taxon. */
export const bodiesOf = (taxon: string): Account =>
  account('inside', `animals.${taxon}`, `Bodies of ${taxon}`, ['N', 'P', 'C'])

/** How many of a taxon there are; a mean over chance, so no whole number. */
export const livingOf = (taxon: string): PlainState => ({
  id: `living.${taxon}`,
  title: `Number of ${taxon}`,
  unit: '1',
})

/** Those of them that came within the last weeks. */
export const newcomersOf = (taxon: string): PlainState => ({
  id: `newcomers.${taxon}`,
  title: `Newcomers among ${taxon}`,
  unit: '1',
})

/** Share of its reserve that an animal has used up. */
export const hungerOf = (taxon: string): PlainState => ({
  id: `hunger.${taxon}`,
  title: `Hunger of ${taxon}`,
  unit: '1',
})
