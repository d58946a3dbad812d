import { type Compared, shareWithin } from '../published-experiments.ts'
import { figuresOf } from '../quoted-figures.ts'
import { agrees, draws, seed } from './run-experiment.ts'
import { asMarkdown } from './table.ts'

/** The page of the docs that sets the model beside published experiments. */
export function presentExperimentsPage(all: readonly Compared[], hash: string): string {
  const rows = all.flatMap((one) => one.rows)
  const signs = rows.filter(({ measured }) => measured.value === undefined)
  const signsHeld = signs.filter(({ holds }) => holds).length
  const near = rows.filter(({ measured }) => measured.within !== undefined)
  const { within, of, independentWithin, independent } = shareWithin(rows)
  return `${[
    '# Beside published experiments',
    '',
    `Made by \`node scripts/run.mjs make-experiments-page\`; each table is what \`npm run experiment\` prints. ${figuresOf(hash)}`,
    '',
    `The model runs under the conditions of ${all.length} experiments with ${draws} draws of all that the catalogue does not know (seed ${seed}). No fact is set for one of them but what its conditions fix, and what stands in for the unexplained is off.`,
    '',
    `- Of ${of} figures that were read in their sources, mostly in abstracts, ${within} lie where the 90 % band reaches (${percent(within, of)}). A figure with an error or a range counts where the band reaches into it.`,
    `- On some of these a prior of the catalogue rests, and of some the set-up was mended after its first run was seen. Of the ${independent} others ${independentWithin} hold (${percent(independentWithin, independent)}). That is the share to expect of experiments that nobody has looked at.`,
    `- Of ${signs.length} directions (more, less, sooner) the middle of the model has ${signsHeld} right.`,
    `- The middle lies within the factor that the file asks, 2 for ratios and 3 for levels, in ${near.filter((row) => row.near).length} of ${near.length}. _Far_ says that the band reaches the figure and the middle does not come near it.`,
    `- Bands are wide: half of them span more than a factor of ${medianSpan(rows)} between their ends, so that a figure inside is weak praise.`,
    '',
    'Sources state less than a model asks: what had to be assumed stands with each. A set-up was mended where it did not say what the source did, and the table says so. That all of a lit surface has the same light was set for all files at once after the first run, and brought no figure into the band. No fact of the catalogue was touched.',
    '',
    'Why another set of such experiments should do about as well: nothing was fitted to these, and they were taken from a list that was made before the model was run on it. Where it would do worse: turf under heavy grazing, corals in pulses of nutrients, and sand by its grain, as the misses say.',
    '',
    '## Misses',
    '',
    ...all.flatMap(({ document, rows: own }) =>
      own
        .filter((row) => !agrees(row))
        .map(({ measured: { says, miss } }) => `- _${document.title}._ ${says}: ${miss ?? 'not named yet'}.`),
    ),
    '',
    '## Tables',
    '',
    ...all.flatMap(({ document, rows: own }) => asMarkdown(document, own)),
  ]
    .join('\n')
    .trimEnd()}\n`
}

const percent = (part: number, whole: number): string => `${Math.round((100 * part) / whole)} %`

function medianSpan(rows: readonly Compared['rows'][number][]): string {
  const spans = rows
    .filter(({ low, high, measured }) => measured.value !== undefined && low > 0 && high > 0)
    .map(({ low, high }) => high / low)
    .sort((a, b) => a - b)
  return (spans[Math.floor(spans.length / 2)] ?? Number.NaN).toPrecision(2)
}
