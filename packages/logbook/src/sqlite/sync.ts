import { closeSync, fsyncSync, openSync } from 'node:fs'

/** Waits until what was written to a file is on the disk. */
export function syncFile(file: string): void {
  sync(file, 'r+')
}

/** Makes names in a folder last. Windows cannot open a folder, and writes a name with its file. */
export function syncFolder(folder: string): void {
  if (process.platform !== 'win32') sync(folder, 'r')
}

function sync(path: string, flags: 'r' | 'r+'): void {
  const handle = openSync(path, flags)
  try {
    fsyncSync(handle)
  } finally {
    closeSync(handle)
  }
}
