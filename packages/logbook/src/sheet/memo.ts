/** A function of a text that remembers what it said; a log repeats its words and figures. */
export function memo<T>(reckon: (text: string) => T, most = 50_000): (text: string) => T {
  const known = new Map<string, T>()
  return (text) => {
    const found = known.get(text)
    if (found !== undefined || known.has(text)) return found as T
    const value = reckon(text)
    if (known.size >= most) known.clear()
    known.set(text, value)
    return value
  }
}
