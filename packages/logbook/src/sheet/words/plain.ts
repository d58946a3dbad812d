/** Small letters without accents and with plain marks, so that one list of words serves several languages. */
export function plain(text: string): string {
  return text
    .trim()
    .toLowerCase()
    .normalize('NFD')
    .replaceAll(/\p{M}/gu, '')
    .replaceAll('ß', 'ss')
    .replaceAll(/[₀-₉]/g, (digit) => String('₀₁₂₃₄₅₆₇₈₉'.indexOf(digit)))
    .replaceAll(/[‐-―−]/g, '-')
    .replaceAll(/[’ʼ´`]/g, "'")
    .replaceAll(/\s+/g, ' ')
}

/** From lists of words parted by spaces to the thing that each word means. */
export function meanings<Key extends string>(words: Readonly<Record<Key, string>>): ReadonlyMap<string, Key> {
  const pairs = Object.entries(words) as [Key, string][]
  return new Map(pairs.flatMap(([key, list]) => list.split(' ').map((word) => [word, key] as const)))
}
