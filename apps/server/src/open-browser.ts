import { spawn } from 'node:child_process'

type Env = Readonly<Record<string, string | undefined>>

/** The command that opens an address on a platform, or undefined where none should or can. */
export function browserCommand(
  platform: NodeJS.Platform,
  env: Env,
): readonly [string, ...(readonly string[])] | undefined {
  if (env.HOLDFAST_NO_BROWSER || env.CI) return undefined
  if (platform === 'darwin') return ['open']
  // "start" would need a shell; this asks the same part of the system without one.
  if (platform === 'win32') return ['rundll32', 'url.dll,FileProtocolHandler']
  return env.DISPLAY || env.WAYLAND_DISPLAY ? ['xdg-open'] : undefined
}

/** Opens the address in the keeper's browser if that can be done; the address is printed in any case. */
export function openBrowser(address: string, platform: NodeJS.Platform, env: Env): void {
  const [command, ...args] = browserCommand(platform, env) ?? []
  if (command === undefined) return
  const opener = spawn(command, [...args, address], { detached: true, stdio: 'ignore' })
  opener.on('error', () => undefined)
  opener.unref()
}
