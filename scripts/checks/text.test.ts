import { describe, expect, it } from 'vitest'
import { textIssues } from './text.mjs'

describe('a source file', () => {
  it('may have 400 lines', () => {
    expect(textIssues('a.ts', 'x\n'.repeat(400))).toEqual([])
  })

  it('may not have 401', () => {
    expect(textIssues('a.ts', 'x\n'.repeat(401))).toEqual([expect.stringContaining('a.ts: has 401 lines')])
  })
})

describe('a file that a program made, as its first line says', () => {
  it('may be as long as it comes', () => {
    expect(textIssues('a.ts', `// Made from the document.\n${'x\n'.repeat(500)}`)).toEqual([])
  })
})

describe('a path in a text', () => {
  const climb = (steps: number, name: string) => '../'.repeat(steps) + name

  it.each([
    ['README.md', climb(1, 'elsewhere/notes.md')],
    ['docs/model.md', climb(2, 'elsewhere')],
    ['docs/model.md', climb(1, ['sha', 'red'].join(''))],
  ])('of %s may not lead beside the project: %s', (path, target) => {
    expect(textIssues(path, `first\nsee ${target}`)).toEqual([
      expect.stringMatching(new RegExp(`^${path}:2: .*lies beside the project`)),
    ])
  })

  it('may climb inside the project', () => {
    expect(textIssues('apps/web/src/log/form.ts', `import '${climb(1, 'shared/field.ts')}'`)).toEqual([])
  })

  it.each(['home', 'root', 'work', 'Users'])('may not start at /%s of one machine', (folder) => {
    expect(textIssues('a.md', `in ${['', folder, 'someone'].join('/')}`)).toEqual([
      expect.stringContaining('is a path of one machine'),
    ])
  })

  it('may be an address on the web', () => {
    expect(textIssues('a.md', 'https://example.org/work/home/root/1')).toEqual([])
  })
})
