/** Reads an experiment and says everything that is wrong with it at once, by place, value and what is accepted. */
import { assemble, type Event, type Model, type System, stateId } from '@holdfast/ecosystem'
import { issueInWords, readSystemFile } from '@holdfast/logbook'
import {
  type ExperimentDocument,
  experimentDocument,
  type Happening,
  type Measured,
  type Reading,
  type Treatment,
} from './experiment-file.ts'
import { named } from './named.ts'

/** One treatment, ready to run. */
export interface Arm {
  readonly name: string
  readonly system: System
  readonly model: Model
  readonly start: NonNullable<ExperimentDocument['start']>
  readonly stocks: Readonly<Record<string, number>>
  readonly set: Readonly<Record<string, number>>
  readonly events: readonly Event[]
}

export interface Experiment {
  readonly document: ExperimentDocument
  /** The only one is named ''. */
  readonly arms: readonly Arm[]
}

export type ExperimentRead =
  | { readonly ok: true; readonly experiment: Experiment }
  | { readonly ok: false; readonly issues: readonly string[] }

/** The experiment that a JSON text describes, or all that keeps it from being run. */
export function readExperiment(text: string): ExperimentRead {
  let held: unknown
  try {
    held = JSON.parse(text)
  } catch (error) {
    return wrong([`The file is not JSON: ${error instanceof Error ? error.message : error}.`])
  }
  const parsed = experimentDocument.safeParse(held)
  if (!parsed.success)
    return wrong(
      parsed.error.issues.map(
        ({ path, message }) => `${path.join('.') || 'file'}: ${shown(at(held, path))}. ${message}.`,
      ),
    )
  const document = parsed.data
  const treatments = Object.entries(document.treatments)
  const read = (treatments.length > 0 ? treatments : ([['', {}]] as const)).map(([name, treatment]) =>
    readArm(document, name, treatment),
  )
  const issues = read.flatMap((arm) => ('issues' in arm ? arm.issues : []))
  const arms = read.flatMap((arm) => ('issues' in arm ? [] : [arm]))
  if (issues.length === 0)
    issues.push(
      ...document.measured.flatMap((one, n) => measuredIssues(`measured.${n}`, one, document, arms)),
    )
  return issues.length > 0 ? wrong(issues) : { ok: true, experiment: { document, arms } }
}

/** What a system is where the file does not say: sea water without nutrients, and nothing evaporates. */
const none = { nitrate: '0 mg/L NO3', phosphate: '0 mg/L PO4', silicate: '0 mg/L SiO2' }
const plain = {
  timeZone: 'UTC',
  'source water': none,
  'salt mix': none,
  salinity: '35 psu',
  evaporation: '0 L/d',
}

const wrong = (issues: readonly string[]): ExperimentRead => ({ ok: false, issues })

function readArm(
  document: ExperimentDocument,
  name: string,
  treatment: Treatment,
): Arm | { readonly issues: readonly string[] } {
  const place = name === '' ? 'system' : `treatments.${name}.system`
  const file = readSystemFile(
    JSON.stringify({ ...plain, name: document.title, ...document.system, ...treatment.system }),
  )
  if (!file.ok) return { issues: file.issues.map((issue) => `${place}: ${issueInWords(issue)}`) }
  const { system } = file
  const model = assemble(system)
  const set = { ...document.set, ...treatment.set }
  const stocks = { ...document.stocks, ...treatment.stocks }
  const parameters = new Set(model.parameters.map(({ fact }) => fact))
  const states = model.states.map(stateId)
  const issues = [
    ...Object.keys(set)
      .filter((id) => !parameters.has(id))
      .map((id) => `set.${id}: no formula of this system reads that fact. Accepted: facts of the catalogue.`),
    ...Object.keys(stocks)
      .filter((id) => !states.includes(id))
      .map((id) => `stocks.${id}: this system has no such account. Accepted: ${states.join(', ')}.`),
  ]
  if (issues.length > 0) return { issues }
  const schedule = [...(document.schedule ?? []), ...(treatment.schedule ?? [])]
  return {
    name,
    system,
    model,
    start: { ...document.start, ...treatment.start },
    stocks,
    set,
    events: schedule.flatMap((one) => events(one, document.days)),
  }
}

/** What comes again and again is one event each time. */
function events({ day, every, until, ...what }: Happening, days: number): readonly Event[] {
  const last = Math.min(until ?? days, days)
  const times = every === undefined ? 1 : Math.floor((last - day) / every + 1e-9) + 1
  return Array.from({ length: Math.max(0, times) }, (_, n) => ({
    ...what,
    day: day + n * (every ?? 0),
  }))
}

function measuredIssues(
  place: string,
  measured: Measured,
  { days }: ExperimentDocument,
  arms: readonly Arm[],
): readonly string[] {
  const figures = [measured.value, measured.above, measured.below].filter((one) => one !== undefined)
  const one = figures.length === 1 ? [] : [`${place}: give one of value, above, below.`]
  const { low, value, high } = measured
  const order =
    (low ?? value ?? 0) <= (value ?? 0) && (value ?? 0) <= (high ?? value ?? 0)
      ? []
      : [`${place}: low ${low}, value ${value} and high ${high} are not in this order.`]
  return [
    ...one,
    ...order,
    ...[measured.of, measured.over].flatMap((reading, n) =>
      reading === undefined ? [] : readingIssues(`${place}.${n === 0 ? 'of' : 'over'}`, reading, days, arms),
    ),
  ]
}

function readingIssues(
  place: string,
  reading: Reading,
  days: number,
  arms: readonly Arm[],
): readonly string[] {
  const arm = arms.find(({ name }) => name === (reading.in ?? arms[0].name))
  if (arm === undefined)
    return [
      `${place}.in: there is no treatment "${reading.in}". Accepted: ${arms.map(({ name }) => name).join(', ')}.`,
    ]
  const late = ['on', 'from', 'to'].flatMap((key) => {
    const day = (reading as Readonly<Record<string, unknown>>)[key]
    return typeof day === 'number' && day > days ? [`${place}.${key}: day ${day} is after day ${days}.`] : []
  })
  const undated =
    reading.read !== 'day of share' &&
    !('on' in reading && reading.on !== undefined) &&
    (reading.from === undefined || reading.to === undefined || reading.to <= reading.from)
      ? [`${place}: say the day with on, or from and to with from before to.`]
      : []
  const states = arm.model.states.map(stateId)
  const unknown =
    'of' in reading
      ? reading.of
          .filter((name) => !states.some(named(name)))
          .map((name) => `${place}.of: this system has no account "${name}". Accepted: ${states.join(', ')}.`)
      : []
  return [...late, ...undated, ...unknown]
}

function at(held: unknown, path: readonly PropertyKey[]): unknown {
  return path.reduce<unknown>(
    (value, key) =>
      typeof value === 'object' && value !== null
        ? (value as Readonly<Record<PropertyKey, unknown>>)[key]
        : undefined,
    held,
  )
}

const shown = (value: unknown): string =>
  value === undefined ? 'nothing stands here' : `${JSON.stringify(value).slice(0, 60)} does not fit`
