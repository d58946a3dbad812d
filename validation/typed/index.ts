import { spawnSync } from 'node:child_process'
import { type Event, type System, usualSettings } from '@holdfast/ecosystem'
import { missingScipy } from '@holdfast/ecosystem/build/scipy/run-scipy'
import { nothingUnexplained, run } from '@holdfast/ecosystem/testing/run'
import { box } from '@holdfast/ecosystem/testing/systems'
import type { Check } from '../check.ts'
import typed from './typed.py?raw'

const days = 90
/** Relative to the most that an account held. */
const allowed = 1e-4

const system: System = {
  ...box,
  temperature_C: 26,
  sand: { mass_kg: 12, depth_cm: 4 },
  equipment: [{ kind: 'ferric media reactor', mass_g: 30, flow_L_per_hour: 40 }],
}

const events: readonly Event[] = [
  { day: 10.5, kind: 'dose', substance: 'ammonium chloride', mass_g: 0.3 },
  { day: 20.5, kind: 'dose', substance: 'monopotassium phosphate', mass_g: 0.05 },
  { day: 35.25, kind: 'water change', volume_L: 15 },
  { day: 50.5, kind: 'media placed', mass_g: 45 },
  { day: 60.5, kind: 'dose', substance: 'ammonium chloride', mass_g: 0.2 },
  { day: 70.5, kind: 'dose', substance: 'monopotassium phosphate', mass_g: 0.04 },
]

/** What the three processes are looked at without. */
const without = {
  ...nothingUnexplained,
  'den.sand': 0,
  'den.live_rock': 0,
  'den.inside_rock_share': 0,
  'nit.aob.decay': 0,
  'nit.nob.decay': 0,
  'nit.poor.decay': 0,
  'ammonia.evasion': 0,
  'si.release.sand': 0,
  'si.release.rock': 0,
  'si.release.glass': 0,
}

/**
 * Three processes in one box of water, typed a second time by hand from how their papers state them, and solved by
 * SciPy over 90 days with events: an export of our declarations would share our mistakes.
 */
export function typedFromPapers(): readonly Check[] {
  const missing = missingScipy()
  if (missing) return [{ name: 'processes typed from papers', outcome: 'skipped', says: missing.missing }]
  const samples = Array.from({ length: days + 1 }, (_, day) => day)
  const ours = run({
    system,
    days,
    events,
    samples,
    facts: without,
    start: { 'water.silicate/Si': 0, 'water.ammonia/N': 3000 },
    integrator: { ...usualSettings, tolerance: 1e-7 },
  })
  const { model, parameters } = ours
  const setting = (id: string): number => model.settings.values[model.settings.ids.indexOf(id)]
  const question = {
    days: samples,
    events,
    facts: Object.fromEntries(model.parameters.map(({ fact }, i) => [fact, parameters[i]])),
    start: Object.fromEntries(accounts.map((id) => [id, ours.course(id)[0]])),
    tank: {
      litres: setting('water volume'),
      celsius: setting('temperature'),
      sand_kg: setting('sand mass'),
      porous_m2: setting('porous area'),
      media_g: setting('ferric media mass'),
      media_flow: setting('ferric media flow'),
    },
  }
  const { status, stdout, stderr } = spawnSync('python3', ['-c', typed], {
    input: JSON.stringify(question),
    encoding: 'utf8',
    maxBuffer: 1e8,
  })
  if (status !== 0) throw new Error(`SciPy failed: ${stderr.trim().split('\n').at(-1)}`)
  const theirs = JSON.parse(stdout) as Readonly<Record<string, readonly number[]>>
  return accounts.map((id): Check => {
    const course = ours.course(id)
    const most = Math.max(...theirs[id].map(Math.abs))
    const off = Math.max(...course.map((amount, n) => Math.abs(amount - theirs[id][n]))) / most
    return {
      name: `typed from papers: ${id}`,
      outcome: off <= allowed ? 'passed' : 'failed',
      says: `${off.toExponential(1)} off over ${days} days with ${events.length} events, allowed ${allowed}`,
    }
  })
}

const accounts = [
  'water.ammonia/N',
  'water.nitrite/N',
  'water.nitrate/N',
  'rock.oxidisers-fast/N',
  'rock.oxidisers-slow/N',
  'rock.nitrite-oxidisers-fast/N',
  'rock.nitrite-oxidisers-slow/N',
  'water.phosphate/P',
  'rock.sorbed-fast/P',
  'rock.sorbed-slow/P',
  'media.ferric/P',
]
