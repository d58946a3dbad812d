/** A case as the packages take it: system, observations and events, dates turned into days. */
import type {
  AlgaePresent,
  Equipment,
  Event,
  Medium,
  NewWater,
  Observation,
  Rock,
  RockKind,
  System,
} from '@holdfast/ecosystem'
import { compoundNamed } from '@holdfast/seawater'
import { readingsOf, usualValue } from './answers/readings.ts'
import { anHourLater, daysBetween, noon } from './calendar.ts'
import type { CaseEquipment, CaseEvent, CaseFile, CaseWater } from './case-file.ts'
import { eventsOf, ions, routineAt, stayed, waterChanges } from './husbandry.ts'
import { isAfterItsEvent } from './same-day.ts'

/** The system on the first day, with the routine as it is on the day on which one looks. */
export function caseSystem(file: CaseFile): System {
  const { system } = file
  return {
    id: file.id,
    name: file.title,
    timeZone: 'UTC',
    vessels: system.vessels,
    flow: system.flow,
    surfaces: system.surfaces.map((surface) => ({ ...surface, age_days: surface.age_days ?? 0 })),
    rock: rockAtStart(file),
    ...(system.sand ? { sand: system.sand } : {}),
    source_water: newWater(system.source_water),
    salt_mix: newWater(system.salt_mix),
    salinity_psu: system.salinity_psu,
    temperature_C: system.temperature_C,
    ...(system.pH === undefined ? {} : { pH: system.pH }),
    evaporation_L_per_day: system.evaporation_L_per_day,
    feeds: system.feeds,
    equipment: system.equipment.flatMap((item) => equipmentOf(file, item)),
    animals: system.animals,
    ...(system.corals ? { corals: system.corals } : {}),
    algae: firstSurveys(file),
  }
}

function newWater(water: CaseWater): NewWater {
  const silicate = water.silicate_SiO2_mg_L
  return { ...ions(water), ...(typeof silicate === 'number' ? { SiO2_mg_L: silicate } : {}) }
}

/**
 * The rock of the description without what the log adds: a case describes the system as it stands at the
 * end. Kinds that only come later are there with no mass, so that the model knows them.
 */
function rockAtStart(file: CaseFile): readonly Rock[] {
  const added = eventsOf(file, 'rock added')
  const left = new Map(added.map((event) => [event, Number(event.mass_kg)]))
  const described = file.system.rock.map((rock) => {
    let { mass_kg } = rock
    for (const event of added) {
      const open = left.get(event) ?? 0
      if (event.rock_kind !== rock.kind || rock.age_days > daysBetween(event.date, file.asof)) continue
      const taken = Math.min(open, mass_kg)
      mass_kg -= taken
      left.set(event, open - taken)
    }
    return { ...rock, mass_kg, age_days: rock.age_days ?? 0 }
  })
  const known = new Set(described.map(({ kind }) => kind))
  const later = [...new Set(added.map((event) => event.rock_kind as RockKind))].filter(
    (kind) => !known.has(kind),
  )
  return [...described, ...later.map((kind) => ({ kind, mass_kg: 0, age_days: 0 }))]
}

function equipmentOf(file: CaseFile, item: CaseEquipment): readonly Equipment[] {
  const { kind } = item
  if (kind === 'water change') {
    const routine = routineAt(file, file.asof)
    return routine === undefined ? [] : [{ kind, ...routine }]
  }
  if (kind === 'skimmer') {
    const off = (item.off as readonly (readonly [string, string])[] | undefined)?.map(
      ([from, to]) => [noon(from), noon(to)] as const,
    )
    return [{ ...item, kind, ...(off === undefined ? {} : { off }) } as Equipment]
  }
  if (kind === 'ferric media reactor') {
    const dates = (['placed', 'removed'] as const).flatMap((key) =>
      item[key] === undefined ? [] : [[key, anHourLater(noon(String(item[key])))] as const],
    )
    return [{ ...item, kind, ...Object.fromEntries(dates) } as unknown as Equipment]
  }
  if (kind === 'refugium') {
    const dates = (['light_off_since', 'last_harvest'] as const).flatMap((key) =>
      item[key] === undefined ? [] : [[key, noon(String(item[key]))] as const],
    )
    return [{ ...item, kind, ...Object.fromEntries(dates) } as Equipment]
  }
  if (kind === 'activated carbon' || kind === 'organic carbon dosing') {
    const days = (['placed', 'since'] as const).flatMap((key) =>
      item[key] === undefined ? [] : [[key, anHourLater(noon(String(item[key])))] as const],
    )
    const schedule = (item.schedule as readonly { readonly from_: string }[] | undefined)?.map((step) => ({
      ...step,
      from_: anHourLater(noon(step.from_)),
    }))
    return [
      {
        ...item,
        ...Object.fromEntries(days),
        ...(schedule === undefined ? {} : { schedule }),
      } as unknown as Equipment,
    ]
  }
  return [item as unknown as Equipment]
}

/** Words of the trade for kinds of algae; other names are taken as keys of the catalogue. */
const algaeNames: Readonly<Record<string, string>> = {
  'hair algae': 'hair_green',
  film: 'film_green',
  'film algae': 'film_green',
  diatoms: 'film_diatom',
  cyanobacteria: 'cyano',
  dinoflagellates: 'dino',
  'bubble algae': 'bubble',
}

export function algaeKey(name: string): string {
  return algaeNames[name.toLowerCase()] ?? name.toLowerCase().replace(/[\s-]+/g, '_')
}

/** Cover on the first survey of each kind at each surface: the best there is for the first day. */
function firstSurveys(file: CaseFile): readonly AlgaePresent[] {
  const seen = new Map<string, AlgaePresent>()
  for (const { surface, algae, cover } of eventsOf(file, 'survey')) {
    const present = { kind: algaeKey(String(algae)), surface: String(surface), cover: Number(cover) }
    const key = `${present.kind} ${present.surface}`
    if (!seen.has(key)) seen.set(key, present)
  }
  return [...seen.values()]
}

/** Days at noon; a reading that was taken after the change of its day stands two hours later. */
export function caseObservations(file: CaseFile): readonly Observation[] {
  const readings = (['nitrate', 'phosphate', 'ammonia', 'nitrite'] as const).flatMap((quantity) =>
    readingsOf(file, quantity).map((reading) => ({
      day: isAfterItsEvent(file, reading) ? noon(reading.date) + 2 / 24 : noon(reading.date),
      quantity,
      value: usualValue(reading),
      belowDetection: reading.below_detection === true,
    })),
  )
  const surveys = eventsOf(file, 'survey').map(({ date, surface, algae, cover }) => ({
    day: noon(date),
    quantity: 'cover' as const,
    value: Number(cover),
    belowDetection: false,
    surface: String(surface),
    algae: algaeKey(String(algae)),
  }))
  return [...readings, ...surveys].sort((a, b) => a.day - b.day)
}

/** What happened up to the day on which one looks, an hour after that day's readings. */
export function caseEvents(file: CaseFile): readonly Event[] {
  const changes = waterChanges(file, file.start, file.asof).map(({ date, volume_L, water }) => ({
    day: anHourLater(noon(date)),
    kind: 'water change' as const,
    volume_L,
    water: { NO3_mg_L: water.NO3_mg_L, PO4_mg_L: water.PO4_mg_L },
  }))
  const others = file.log.events
    .filter(({ date }) => date >= file.start && date <= file.asof)
    .flatMap((event) => {
      const known = eventOf(event)
      return known === undefined ? [] : [known]
    })
  return [...changes, ...others].sort((a, b) => a.day - b.day)
}

/** Events that the model takes; surveys are observations, notes are for people, changes are counted above. */
function eventOf(event: CaseEvent): Event | undefined {
  const day = anHourLater(noon(event.date))
  const { kind, date: _date, ...rest } = event
  switch (kind) {
    case 'rock added': {
      const rock = { kind: event.rock_kind as RockKind, mass_kg: Number(event.mass_kg), age_days: 0 }
      return { day, kind, rock }
    }
    case 'dose change':
      return {
        day,
        kind: 'equipment change',
        equipment: 'organic carbon dosing',
        changes: /ethanol/.test(String(event.unit))
          ? { mL_ethanol_per_day: Number(event.to) }
          : { mL_per_day: Number(event.to) },
      }
    case 'media placed':
      return { day, kind, mass_g: Number(event.mass_g), medium: mediumOf(event) }
    case 'media removed':
      return { day, kind, medium: mediumOf(event) }
    case 'harvest':
      return { day, kind, from: 'refugium', wet_g: Number(event.wet_g) }
    case 'feed change':
      return { day, kind, g_per_day: Number(event.g_per_day) }
    case 'equipment change': {
      const { equipment, ...changes } = rest
      return { day, kind, equipment: String(equipment), changes }
    }
    case 'dose': {
      const substance = compoundNamed(String(event.substance))
      return substance === undefined ? undefined : { day, kind, substance, mass_g: Number(event.mass_g) }
    }
    case 'animals added':
    case 'animals lost': {
      const mass = typeof event.mass_g === 'number' ? { mass_g: event.mass_g } : {}
      const said = { day, taxon: String(event.taxon), count: Number(event.count), ...mass }
      return kind === 'animals added' ? { kind, ...said } : { kind, ...said, bodyTakenOut: !stayed(event) }
    }
    default:
      return undefined
  }
}

/** Media are ferric unless they are called carbon. */
const mediumOf = ({ media }: CaseEvent): Medium => (/carbon/.test(String(media)) ? 'carbon' : 'ferric')
