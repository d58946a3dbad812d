/**
 * The circles in a graph of files, each told once: from a file through those it imports and back.
 *
 * @param {ReadonlyMap<string, readonly string[]>} edges a file's imports; names without a row are left out
 * @returns {string[][]} each ends where it starts
 */
export function cycles(edges) {
  /** @type {string[][]} */
  const found = []
  /** @type {Set<string>} */
  const done = new Set()
  /** @type {string[]} */
  const trail = []
  /** @param {string} file */
  const walk = (file) => {
    const at = trail.indexOf(file)
    if (at !== -1) found.push([...trail.slice(at), file])
    if (at !== -1 || done.has(file)) return
    trail.push(file)
    for (const next of edges.get(file) ?? []) walk(next)
    trail.pop()
    done.add(file)
  }
  for (const file of edges.keys()) walk(file)
  return found
}
