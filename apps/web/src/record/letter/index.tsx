import type { Described } from '../../shell/described.ts'
export function LetterView({ described }: { readonly described: Described | undefined }) {
  return <p>{described?.system.name}</p>
}
