import { join } from 'node:path'

/** The surroundings that decide where the log lives; given in, so that a test can be any machine. */
export interface Surroundings {
  readonly platform: NodeJS.Platform
  readonly home: string
  readonly env: Readonly<Record<string, string | undefined>>
}

/** The keeper's data folder by the convention of the platform; HOLDFAST_DATA overrides. */
export function dataFolder({ platform, home, env }: Surroundings): string {
  const chosen = env.HOLDFAST_DATA
  if (chosen) return chosen
  if (platform === 'win32') return join(env.APPDATA || join(home, 'AppData', 'Roaming'), 'Holdfast')
  if (platform === 'darwin') return join(home, 'Library', 'Application Support', 'Holdfast')
  return join(env.XDG_DATA_HOME || join(home, '.local', 'share'), 'holdfast')
}
