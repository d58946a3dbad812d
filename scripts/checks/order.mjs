/**
 * The order of the packages: each may import what stands in its row, and what that may import in
 * turn. Nothing points up. An app may import every package and no other app; so may the folders that
 * look at the project from outside (validation, bench, examples).
 */

/** @type {Readonly<Record<string, readonly string[]>>} */
const stepDown = {
  elementary: [],
  quantities: ['elementary'],
  seawater: ['quantities'],
  facts: ['quantities'],
  ecosystem: ['seawater', 'facts'],
  inference: ['ecosystem'],
  planning: ['inference'],
  'crew-plan': ['commissioning'],
  ladder: ['crew-plan', 'identification'],
  commissioning: ['inference'],
  reach: ['crew-plan'],
  survey: ['facts'],
  identification: ['facts', 'elementary'],
  logbook: ['seawater'],
  client: ['logbook'],
  'page-headers': [],
  testing: [],
}

/** What a package may import with `import type` only, though it stands higher: types leave no code. @type {Readonly<Record<string, readonly string[]>>} */
const typesOnly = { logbook: ['ecosystem'], client: ['ecosystem'] }

/** Packages that take nothing of Node, and so run in a browser as they do there. */
export const pure = Object.keys(stepDown).filter((name) => name !== 'logbook')

/** Packages whose results have the same bits on every engine. */
export const sameBits = ['elementary', 'seawater', 'ecosystem', 'inference']

/**
 * @param {string} importer folder of the importing package, such as 'packages/facts'
 * @param {string} imported name of the imported package without the scope, such as 'quantities'
 * @returns {'values' | 'types' | 'nothing'} what the one may take from the other
 */
export function mayTake(importer, imported) {
  if (!(imported in stepDown)) return 'nothing'
  const [kind, name] = importer.split('/')
  if (kind !== 'packages') return 'values'
  if (below(name).has(imported)) return 'values'
  return typesOnly[name]?.includes(imported) ? 'types' : 'nothing'
}

/** @param {string} folder such as 'packages/facts' */
export function hasPlace(folder) {
  const [kind, name] = folder.split('/')
  return kind !== 'packages' || name in stepDown
}

/**
 * @param {string} name
 * @returns {Set<string>} every package under this one
 */
function below(name) {
  return new Set((stepDown[name] ?? []).flatMap((next) => [next, ...below(next)]))
}
