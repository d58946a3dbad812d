import { existsSync, readdirSync } from 'node:fs'
import { delimiter, join } from 'node:path'

const program = process.platform === 'win32' ? 'postgres.exe' : 'postgres'

/**
 * The folder of PostgreSQL's programs on this machine: HOLDFAST_POSTGRES, Debian's (the newest), or one
 * of PATH; undefined where there is none.
 */
export function postgresBinaries(): string | undefined {
  const { HOLDFAST_POSTGRES = '', PATH = '' } = process.env
  return [HOLDFAST_POSTGRES, ...ofDebian(), ...PATH.split(delimiter)].find(
    (folder) => folder !== '' && existsSync(join(folder, program)) && existsSync(join(folder, initdb)),
  )
}

const initdb = process.platform === 'win32' ? 'initdb.exe' : 'initdb'

function ofDebian(): readonly string[] {
  const all = '/usr/lib/postgresql'
  if (!existsSync(all)) return []
  const versions = readdirSync(all).toSorted((a, b) => Number(b) - Number(a))
  return versions.map((version) => join(all, version, 'bin'))
}
