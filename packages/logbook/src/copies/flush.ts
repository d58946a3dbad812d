import { open } from 'node:fs/promises'

/** Waits until what was written to a file is on the disk. */
export async function flushFile(file: string): Promise<void> {
  const handle = await open(file, 'r+')
  try {
    await handle.sync()
  } finally {
    await handle.close()
  }
}

/** Makes names in a folder last. Windows cannot open a folder, and writes a name with its file. */
export async function flushFolder(folder: string): Promise<void> {
  if (process.platform === 'win32') return
  const handle = await open(folder, 'r')
  try {
    await handle.sync()
  } finally {
    await handle.close()
  }
}
