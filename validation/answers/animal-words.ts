import { type Grazer, grazers } from '@holdfast/facts'

/** Words of the trade for animals that neither their names nor their group say. */
const tradeWords: Readonly<Record<string, (animal: Grazer) => boolean>> = {
  'any animal': () => true,
  'bristletooth tang': ({ mouth }) => mouth === 'bristletooth',
  'long spined urchin': ({ taxon }) => /^(Diadema|Echinothrix) /.test(taxon),
}

const plain = (word: string): string => word.toLowerCase().replaceAll(/[_-]/g, ' ').trim()
const singular = (word: string): string => word.replace(/(?<!s)s$/, '')

/**
 * The animals of the catalogue that a word means: a group, a taxon, a genus, a word of the trade, or words that
 * all stand in their names. None where it means none.
 */
export function animalsCalled(word: string): readonly Grazer[] {
  const called = plain(word)
  const known = tradeWords[called]
  if (known) return grazers().filter(known)
  const ofGroup = grazers().filter(
    ({ group }) => plain(group) === called || plain(group) === singular(called),
  )
  if (ofGroup.length > 0) return ofGroup
  const parts = called.split(/\s+/).map(singular)
  return grazers().filter(({ taxon, tradeName, group }) => {
    const names = plain(`${taxon} ${tradeName} ${group}`)
      .split(/[^a-z']+/)
      .map(singular)
    return parts.every((part) => names.includes(part))
  })
}
