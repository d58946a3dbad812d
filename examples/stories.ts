import type { Story } from './making/story.ts'
import { reef600 } from './reef-600/story.ts'

/** The examples by the name of their folder; the first is the one that a fresh start shows. */
export const stories: Readonly<Record<string, Story>> = {
  'reef-600': reef600,
}
