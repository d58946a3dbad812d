import type { Plugin } from 'vite'

export function plugins(): Plugin[] {
  return []
}
