import { newWaterKinds } from '../entries/system-description.ts'
import type { Issue } from '../issue.ts'
import { isTimeZone } from '../model-day.ts'

type Part = Readonly<Record<string, unknown>>

/**
 * What does not fit together in a document: duplicate ids, vessels and surfaces that are named and not
 * there, a time zone that does not exist, covers above the whole. Works on the document as typed, so that
 * these are told together with all else.
 */
export function misfits(document: unknown): readonly Issue[] {
  if (!isPart(document)) return []
  const [vessels, surfaces] = [parts(document, 'vessels'), parts(document, 'surfaces')]
  return [
    ...duplicates('vessels', vessels),
    ...duplicates('surfaces', surfaces),
    ...parts(document, 'flow').flatMap((flow, place) =>
      (Array.isArray(flow.between) ? flow.between : []).flatMap((vessel) =>
        missing(`flow ${place + 1}, between`, vessel, 'vessel', vessels),
      ),
    ),
    ...surfaces.flatMap((one, place) =>
      missing(`surfaces ${place + 1}, vessel`, one.vessel, 'vessel', vessels),
    ),
    ...parts(document, 'animals').flatMap((one, place) =>
      missing(`animals ${place + 1}, vessel`, one.vessel, 'vessel', vessels),
    ),
    ...duplicates(
      'own animals',
      parts(document, 'own animals').map(({ taxon }) => ({ id: taxon })),
    ),
    ...parts(document, 'algae').flatMap((one, place) =>
      missing(`algae ${place + 1}, surface`, one.surface, 'surface', surfaces),
    ),
    ...parts(document, 'equipment').flatMap((one, place) =>
      one.kind === 'refugium' ? missing(`equipment ${place + 1}, vessel`, one.vessel, 'vessel', vessels) : [],
    ),
    ...waterWithoutFigures(document),
    ...coversAboveWhole(parts(document, 'algae')),
    ...zoneIssue(document.timeZone),
  ]
}

const isPart = (value: unknown): value is Part =>
  typeof value === 'object' && value !== null && !Array.isArray(value)

function parts(document: Part, key: string): readonly Part[] {
  const list = document[key]
  return Array.isArray(list) ? list.filter(isPart) : []
}

function duplicates(where: string, list: readonly Part[]): Issue[] {
  const ids = list.map((one) => one.id).filter((id) => typeof id === 'string')
  const twice = new Set(ids.filter((id, place) => ids.indexOf(id) !== place))
  return [...twice].map((id) => ({
    code: 'duplicate-id',
    where,
    got: `"${id}" stands more than once`,
    accepted: 'Each id once.',
    next: 'Give one of them another id.',
  }))
}

function missing(where: string, named: unknown, what: string, list: readonly Part[]): Issue[] {
  const ids = list.map((one) => one.id)
  if (typeof named !== 'string' || ids.includes(named)) return []
  return [
    {
      code: `no-such-${what}`,
      where,
      got: `there is no ${what} "${named}"`,
      accepted: ids.length === 0 ? `No ${what} is named yet.` : `There is: ${ids.join(', ')}.`,
      next: `Name one of these, or add the ${what}.`,
    },
  ]
}

/** Nitrate and phosphate may be left out only of water of which it is known what it usually brings. */
function waterWithoutFigures(document: Part): Issue[] {
  return ['source water', 'salt mix'].flatMap((where) => {
    const water = document[where]
    if (!isPart(water) || newWaterKinds.some((kind) => kind === water.kind)) return []
    return ['nitrate', 'phosphate']
      .filter((key) => water[key] === undefined)
      .map((key) => ({
        code: 'missing',
        where: `${where}, ${key}`,
        got: 'it is missing',
        accepted: `A figure, or one of these kinds of water: ${newWaterKinds.join(', ')}.`,
        next: 'Add it, or name the kind.',
      }))
  })
}

function coversAboveWhole(algae: readonly Part[]): Issue[] {
  const sums = new Map<string, number>()
  for (const { surface, cover } of algae) {
    if (typeof surface === 'string' && typeof cover === 'number')
      sums.set(surface, (sums.get(surface) ?? 0) + cover)
  }
  // Tenths that people write need not add up to 1 in binary.
  const tooMuch = [...sums].filter(([, sum]) => sum > 1 + 1e-9)
  return tooMuch.map(([surface, sum]) => ({
    code: 'above-whole',
    where: 'algae',
    got: `the covers of "${surface}" add up to ${sum.toPrecision(3)}`,
    accepted: 'Up to 1, the whole surface.',
    next: 'Give smaller covers.',
  }))
}

function zoneIssue(timeZone: unknown): Issue[] {
  if (typeof timeZone !== 'string' || isTimeZone(timeZone)) return []
  const accepted = 'A zone of the IANA list, such as Europe/Berlin or America/Chicago.'
  return [
    {
      code: 'unknown-time-zone',
      where: 'timeZone',
      got: `"${timeZone}" is no zone we know`,
      accepted,
      next: 'Give the zone of the place where the tank stands.',
    },
  ]
}
