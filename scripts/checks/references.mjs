import { parseSync, Visitor } from 'vite'

/**
 * @typedef {object} Reference
 * @property {string} specifier as written: './x.ts', '@holdfast/facts', 'zod'
 * @property {boolean} types whether it is gone when the types are stripped
 * @property {number} line counted from 1
 */

/**
 * What a module refers to: imports, re-exports, dynamic imports, types by import(), glob imports, and
 * scripts by `new URL('./x.ts', import.meta.url)`, which is how a worker is named.
 *
 * @param {string} path tells the language by its ending
 * @param {string} text
 * @returns {Reference[]}
 * @throws {SyntaxError} when the text is no module
 */
export function references(path, text) {
  /** @type {Reference[]} */
  const found = []
  /** @param {{ type: string, value?: unknown, start: number } | null | undefined} source @param {boolean} types */
  const note = (source, types) => {
    if (source?.type !== 'Literal' || typeof source.value !== 'string') return
    found.push({ specifier: source.value, types, line: lineAt(text, source.start) })
  }
  new Visitor({
    ImportDeclaration: (node) => note(node.source, node.importKind === 'type'),
    ExportAllDeclaration: (node) => note(node.source, node.exportKind === 'type'),
    ExportNamedDeclaration: (node) => note(node.source, node.exportKind === 'type'),
    ImportExpression: (node) => note(node.source, false),
    TSImportType: (node) => note(node.source, true),
    NewExpression(node) {
      const [first, second] = node.arguments
      const named = node.callee.type === 'Identifier' && node.callee.name === 'URL'
      if (!named || !isImportMeta(second, 'url') || first.type !== 'Literal') return
      if (/\.(ts|tsx|mjs|js)$/.test(String(first.value))) note(first, false)
    },
    CallExpression(node) {
      if (isImportMeta(node.callee, 'glob')) note(node.arguments[0], false)
    },
  }).visit(parse(path, text))
  return found
}

/** @param {string} path @param {string} text */
export function parse(path, text) {
  const { program, errors } = parseSync(path, text)
  if (errors.length > 0) throw new SyntaxError(`${path}: ${errors[0].message}`)
  return program
}

/** @param {string} text @param {number} offset */
export function lineAt(text, offset) {
  return text.slice(0, offset).split('\n').length
}

/** @param {import('vite').ESTree.Node | undefined} node @param {string} property */
function isImportMeta(node, property) {
  if (node?.type !== 'MemberExpression' || node.object.type !== 'MetaProperty') return false
  return node.property.type === 'Identifier' && node.property.name === property
}
