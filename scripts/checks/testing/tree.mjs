import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { dirname, join } from 'node:path'
import { onTestFinished } from 'vitest'

/**
 * A folder with these files, gone when the test is over.
 *
 * @param {Readonly<Record<string, string>>} files path and content
 * @returns {string} the folder
 */
export function tree(files) {
  const root = mkdtempSync(join(tmpdir(), 'holdfast-tree-'))
  onTestFinished(() => rmSync(root, { recursive: true, force: true }))
  for (const [path, content] of Object.entries(files)) {
    mkdirSync(dirname(join(root, path)), { recursive: true })
    writeFileSync(join(root, path), content)
  }
  return root
}
