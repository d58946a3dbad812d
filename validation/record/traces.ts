/** How many acknowledgements came after the disk had written what they acknowledge, and how many before. */
export interface Acknowledged {
  readonly after: number
  readonly before: number
}

interface Call {
  readonly process: string
  readonly name: string
  /** The file or connection, and what else was given. */
  readonly given: string
}

/** The calls that ended, in order of their ends; one that another process interrupted ends at its rest. */
function callsOf(trace: string): readonly Call[] {
  const open = new Map<string, string>()
  return trace.split('\n').flatMap((line): Call[] => {
    const [, process, said] = /^(\d+)\s+(.*)$/.exec(line) ?? ['', '', line]
    if (said.endsWith('<unfinished ...>')) {
      open.set(process, said.replace('<unfinished ...>', ''))
      return []
    }
    const rest = /^<\.\.\. \w+ resumed>(.*)$/.exec(said)
    const whole = rest === null ? said : `${open.get(process) ?? ''}${rest[1]}`
    const call = /^(\w+)\((.*)\)\s+= (-?\d+)/.exec(whole)
    return call === null || Number(call[3]) < 0 ? [] : [{ process, name: call[1], given: call[2] }]
  })
}

const isSync = ({ name }: Call): boolean => name === 'fsync' || name === 'fdatasync'

/**
 * The writer says "stored" on its output when an entry was acknowledged, "attached" for a file. Before,
 * the journal was written and then synced; the file was synced, then renamed, then its folder synced.
 */
export function ofSqlite(trace: string): Acknowledged {
  const found = { after: 0, before: 0 }
  let journal: 'untouched' | 'written' | 'synced' = 'untouched'
  let picture: 'untouched' | 'synced' | 'renamed' | 'lasting' = 'untouched'
  for (const call of callsOf(trace)) {
    const { name, given } = call
    if (name === 'pwrite64' && given.includes('holdfast.db-wal>')) journal = 'written'
    else if (isSync(call) && given.includes('holdfast.db-wal>') && journal === 'written') journal = 'synced'
    else if (isSync(call) && given.includes('.unfinished>')) picture = 'synced'
    else if (name.startsWith('rename') && picture === 'synced') picture = 'renamed'
    else if (isSync(call) && /attachments>$/.test(given) && picture === 'renamed') picture = 'lasting'
    else if (name === 'write' && given.includes('"stored ')) {
      found[journal === 'synced' ? 'after' : 'before']++
      journal = 'untouched'
    } else if (name === 'write' && given.includes('"attached ')) {
      found[picture === 'lasting' && journal === 'synced' ? 'after' : 'before']++
      picture = 'untouched'
      journal = 'untouched'
    }
  }
  return found
}

/** A process of the server hears "commit" after it stored a row, and answers when the log is synced. */
export function ofPostgres(trace: string): Acknowledged {
  const found = { after: 0, before: 0 }
  const stores = new Set<string>()
  const commits = new Map<string, { synced: boolean }>()
  for (const call of callsOf(trace)) {
    const { process, name, given } = call
    if (name === 'recvfrom' && /insert into .{0,40}entry/.test(given)) stores.add(process)
    if (name === 'recvfrom' && /commit/i.test(given) && stores.delete(process)) {
      commits.set(process, { synced: false })
    }
    if (isSync(call) && given.includes('pg_wal')) for (const commit of commits.values()) commit.synced = true
    const commit = commits.get(process)
    if (name === 'sendto' && commit !== undefined) {
      found[commit.synced ? 'after' : 'before']++
      commits.delete(process)
    }
  }
  return found
}
