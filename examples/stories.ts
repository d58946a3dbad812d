import type { Story } from './making/story.ts'
import { reef90 } from './reef-90/story.ts'
import { reef600 } from './reef-600/story.ts'
import { refugium1500 } from './refugium-1500/story.ts'

/** The examples by the name of their folder; the first is the one that a fresh start shows. */
export const stories: Readonly<Record<string, Story>> = {
  'reef-600': reef600,
  'reef-90': reef90,
  'refugium-1500': refugium1500,
}
