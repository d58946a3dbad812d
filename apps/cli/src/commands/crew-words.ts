import { type BookLine, type CrewAnswer, type Planned, patchWords, type ToFeed } from '@holdfast/crew-plan'
import { algaeKind, caution, grazer, measure } from '@holdfast/facts'
import { dateOf, type SystemLog } from '@holdfast/logbook'
import { listed } from '../listed.ts'
import { table } from '../table.ts'

/** A crew plan as the terminal tells it. */
export function crewInWords(
  { system, asOf }: SystemLog,
  answer: CrewAnswer,
  untold: readonly string[] = [],
): string {
  const title = `Crew of ${system.name} on ${dateOf(asOf, system.timeZone)}`
  if (answer.status === 'none') return [title, ...answer.issues.map(said)].join('\n\n')
  const { crew, byHand, toFeed = [], steps, check, alternatives, effect, books = [] } = answer
  const fed = toFeed.length > 0 ? 'who comes finds food' : 'nobody starves'
  const verdict =
    answer.status === 'plan'
      ? `Tried for a year in the model, with the hand at its side: ${fed}, and what grows is held.`
      : 'Tried for a year in the model, this crew does not do. Do not buy it; below it says why.'
  const rows = crew.map(({ tradeName, taxon, there, come, leave, order, price_usd: { low, high } }) => [
    tradeName,
    taxon,
    `${there}`,
    `${come}`,
    `${leave}`,
    `${order}`,
    order === 0 ? '' : `${low} to ${high}`,
  ])
  const right = { stands: 'right' } as const
  const columns = [
    { heading: 'Animal' },
    { heading: 'Taxon' },
    { heading: 'There', ...right },
    { heading: 'Come', ...right },
    { heading: 'Leave', ...right },
    { heading: 'To order', ...right },
    { heading: 'Price, US$', ...right },
  ]
  const hand = byHand
    .filter(({ grams_dry_per_week }) => grams_dry_per_week >= 0.05)
    .map(
      ({ surface, patch, kind, grams_dry_per_week }) =>
        `${algaeKind(kind).title} on ${surface}, ${patchWords[patch]}: ${grams_dry_per_week.toPrecision(2)} g dry a week`,
    )
  const cautions = crew
    .filter(({ come }) => come > 0)
    .flatMap(({ tradeName, cautions: words }) => words.map((word) => `${tradeName}: ${word}`))
  const order = steps.map(
    ({ after_days, animals }) =>
      `${dateOf(asOf + after_days, system.timeZone)}: ${animals.map(({ taxon, count }) => `${count} ${nameOf(taxon)}`).join(', ')}`,
  )
  const losses = crew
    .filter(({ lostInYear }) => lostInYear >= 0.05)
    .map(({ taxon, tradeName, lostInYear, turnover: { firstMonth, age, mates, hunger } }) => {
      const causes = {
        'in the first month': firstMonth,
        'by age': age,
        'to tank mates': mates,
        'by hunger': hunger,
      }
      const told = Object.entries(causes).flatMap(([cause, count]) =>
        count >= 0.05 ? [`${count.toFixed(1)} ${cause}`] : [],
      )
      const mind = toFeed.some((one) => one.taxon === taxon)
        ? '; do not replace them, fed fewer are lost'
        : ''
      return `${tradeName}: ${lostInYear.toFixed(1)} (${told.join(', ')})${mind}`
    })
  const others = alternatives.map((other) => {
    const comers = other.crew.filter(({ come }) => come > 0)
    const price = comers.reduce((sum, { price_usd }) => sum + price_usd.high, 0)
    return `${comers.map(({ tradeName, come }) => `${come} ${tradeName}`).join(', ')} (up to ${price} US$)`
  })
  const eaten = crew.reduce((sum, { eats_g_week }) => sum + eats_g_week, 0)
  const water = effect === undefined ? [] : [effect.water[2], effect.water[11]].map(waterSaid)
  return [
    title,
    ...(crew.length === 0
      ? ['No animal earns its place: little grows, or nothing eats it.']
      : [table(columns, rows), verdict]),
    ...(untold.length === 0
      ? []
      : [
          `Reckoned with though the log does not tell of it: ${untold.map((kind) => algaeKind(kind).title).join(', ')}. It grows in every lit tank; a survey makes the plan better.`,
        ]),
    ...listed('Too little grows for these of yours', feedingSaid(toFeed)),
    ...listed('To be given away', givingSaid(crew)),
    ...listed('When they come', order),
    ...listed('For the hand', hand),
    ...listed('Lost in a year', losses),
    ...listed('The water with this crew, and without it', water),
    ...(books.length === 0
      ? []
      : [
          `The year’s books with this crew, and without it in brackets, mg a day. Three months on it eats ${eaten.toPrecision(2)} g of dry algae a week.`,
          table(bookColumns, bookRows(books)),
        ]),
    ...listed('Crews that would do as well', others),
    ...listed('Mind', cautions),
    ...listed('What the trial says', check.issues.map(said)),
  ].join('\n\n')
}

const said = ({ where, got, accepted, next }: CrewIssue): string =>
  `${where} ${got}${accepted === '' ? '' : `; accepted: ${accepted}`}. ${next}`

/** A taxon as keepers call it. */
export const nameOf = (taxon: string): string => grazer(taxon)?.tradeName ?? taxon

/** Who goes, the cautions ahead of how. */
function givingSaid(crew: readonly Planned[]): readonly string[] {
  const leave = crew.filter((one) => one.leave > 0)
  if (leave.length === 0) return []
  const { how, cautions } = measure('crew_reduce')
  return [
    ...cautions.map((key) => caution(key).says),
    ...leave.map((one) => `${one.leave} ${one.tradeName}`),
    how,
  ]
}

/** Who has to be fed, the cautions of feeding ahead of how. */
function feedingSaid(toFeed: readonly ToFeed[]): readonly string[] {
  if (toFeed.length === 0) return []
  const { how, cautions } = measure('crew_feed')
  return [
    ...cautions.map((key) => caution(key).says),
    ...toFeed.map(
      ({ tradeName, count, g_week, tooMany, within_days }) =>
        `${count} ${tradeName}: fed by your hand from day ${within_days} on at the latest, with up to ${g_week.toPrecision(2)} g of dried algae a week; or find ${tooMany === count ? 'a home elsewhere for all' : `homes elsewhere for ${tooMany} of them`}.`,
    ),
    how,
  ]
}

type Month = NonNullable<
  Extract<CrewAnswer, { readonly status: 'plan' | 'refused' }>['effect']
>['water'][number]

function waterSaid({ nitrate_mg_L, phosphate_mg_L, without }: Month, k: number): string {
  const figures = (of: Pick<Month, 'nitrate_mg_L' | 'phosphate_mg_L'>): string =>
    `${of.nitrate_mg_L.toPrecision(2)} mg/L NO3, ${of.phosphate_mg_L.toPrecision(2)} mg/L PO4`
  const when = k === 0 ? 'After three months' : 'After a year'
  return `${when}: ${figures({ nitrate_mg_L, phosphate_mg_L })}; without ${figures(without)}`
}

const bookColumns = [
  { heading: 'Stream' },
  { heading: 'N', stands: 'right' },
  { heading: 'P', stands: 'right' },
] as const

/** Less than this on all sides, mg a day, is no line to read. */
const noLine = 0.05

const bookRows = (books: readonly BookLine[]): readonly (readonly string[])[] =>
  books
    .filter(({ N_mg_day, P_mg_day, without }) =>
      [N_mg_day, P_mg_day, without.N_mg_day, without.P_mg_day].some((amount) => Math.abs(amount) >= noLine),
    )
    .map(({ stream, N_mg_day, P_mg_day, without }) => [
      stream,
      `${N_mg_day.toFixed(1)} (${without.N_mg_day.toFixed(1)})`,
      `${P_mg_day.toFixed(1)} (${without.P_mg_day.toFixed(1)})`,
    ])

type CrewIssue = Extract<CrewAnswer, { readonly status: 'none' }>['issues'][number]
