/** A heading with its lines indented below; nothing where there are none. */
export const listed = (heading: string, lines: readonly string[]): readonly string[] =>
  lines.length === 0 ? [] : [[heading, ...lines.map((line) => `  ${line}`)].join('\n')]
