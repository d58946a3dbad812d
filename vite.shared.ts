import type { Plugin } from 'vite'
import { kernelPlugin } from './packages/ecosystem/build/kernel-plugin.ts'

/** What every build and the tests have in common. */
export function plugins(): Plugin[] {
  return [kernelPlugin()]
}
