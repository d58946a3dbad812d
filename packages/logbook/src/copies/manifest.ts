import canonicalize from 'canonicalize'

import { z } from '../entries/schema.ts'
import type { Issue } from '../issue.ts'
import { sha256 } from '../storage/sha256.ts'

/** The name of the manifest in a backup's folder. A folder without one is no backup, or not yet. */
export const manifestName = 'manifest.json'

/** The version of the form below that this program writes; it reads this one and older. */
const newest = 1

const manifest = z.object({
  format: z.literal('holdfast-backup'),
  version: z.literal(newest),
  /** An ISO instant. */
  madeAt: z.iso.datetime(),
  made: z.enum(['by hand', 'daily']),
  /** The schema of the log. */
  schema: z.int(),
  entries: z.int(),
  /** Every file but this one, by its path in the backup with slashes. */
  files: z.array(z.object({ path: z.string(), size: z.int(), sha256: z.string() })),
  /** Attachments that were damaged or gone when it was made, by their SHA-256. */
  leftOut: z.array(z.string()),
  /** SHA-256 of all the above as canonical JSON (RFC 8785). */
  seal: z.string(),
})

/** What a backup holds, so that damage to any of it is seen. */
export type Manifest = Readonly<z.infer<typeof manifest>>

/** One file of a backup. */
export type BackupFile = Manifest['files'][number]

type Said = Pick<Manifest, 'madeAt' | 'made' | 'schema' | 'entries'> & {
  readonly files: readonly BackupFile[]
  readonly leftOut: readonly string[]
}

/** The manifest of what was just copied. */
export function sealed(said: Said): Manifest {
  const open = { format: 'holdfast-backup', version: newest, ...said } as const
  return { ...open, files: [...said.files], leftOut: [...said.leftOut], seal: sealOf(open) }
}

/** Reads a manifest. @param where  names the backup in the issue */
export function readManifest(
  text: string,
  where: string,
): { readonly ok: true; readonly manifest: Manifest } | { readonly ok: false; readonly issue: Issue } {
  const refused = (code: string, got: string, accepted: string, next: string) =>
    ({ ok: false, issue: { code, where, got, accepted, next } }) as const
  const value = parsed(text)
  const version = versionOf(value)
  if (version !== undefined && version > newest) {
    const got = `it was made by a newer Holdfast (backup of version ${version})`
    return refused('newer-backup', got, `This one reads version ${newest}.`, 'Update this Holdfast.')
  }
  const read = manifest.safeParse(value)
  if (!read.success || sealOf(read.data) !== read.data.seal) {
    const got = `${manifestName} is damaged`
    return refused('damaged-backup', got, 'A backup as it was made.', 'Choose another backup.')
  }
  return { ok: true, manifest: read.data }
}

function sealOf(said: object): string {
  return sha256(canonicalize({ ...said, seal: undefined }) ?? '')
}

function parsed(text: string): unknown {
  try {
    return JSON.parse(text)
  } catch {
    return undefined
  }
}

function versionOf(value: unknown): number | undefined {
  const known = z.object({ format: z.literal('holdfast-backup'), version: z.int() }).safeParse(value)
  return known.success ? known.data.version : undefined
}
