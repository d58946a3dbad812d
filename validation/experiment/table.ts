/** Model beside measurement, as text and as the page of the docs. */
import type { ExperimentDocument } from './experiment-file.ts'
import type { Row } from './run-experiment.ts'

/** The table that a terminal shows. */
export function asText(
  { title, source, conditions, assumed }: ExperimentDocument,
  rows: readonly Row[],
): string {
  return [
    title,
    source,
    `Conditions: ${conditions}`,
    `Assumed: ${assumed}`,
    '',
    ...rows.flatMap((row) => [
      `${judgement(row).padEnd(9)} ${row.measured.says}`,
      `          measured ${published(row)}; model ${modelled(row)} (${row.measured.provenance})`,
      ...(row.measured.miss === undefined ? [] : [`          known miss: ${row.measured.miss}`]),
    ]),
  ].join('\n')
}

/** Lines of Markdown for one experiment; its misses are told on the page once. */
export function asMarkdown(
  { title, source, conditions, assumed }: ExperimentDocument,
  rows: readonly Row[],
): readonly string[] {
  return [
    `### ${title}`,
    '',
    `${source}. ${conditions}`,
    '',
    `_Assumed:_ ${assumed}`,
    '',
    '| measured | published | model: 5 %, middle, 95 % | | known by |',
    '| --- | --- | --- | --- | --- |',
    ...rows.map(
      (row) =>
        `| ${row.measured.says} | ${published(row)} | ${modelled(row)} | ${judgement(row)} | ${row.measured.provenance}${row.measured.rests === undefined ? '' : '; a prior rests on it'}${row.measured.mended === undefined ? '' : `; set-up mended: ${row.measured.mended}`} |`,
    ),
    '',
  ]
}

function published({ measured: { value, low, high, above, below, unit } }: Row): string {
  const ends = low === undefined && high === undefined ? '' : ` (${low ?? value} to ${high ?? value})`
  if (value !== undefined) return `${value}${ends} ${unit}`.trim()
  return `${above === undefined ? `under ${below}` : `over ${above}`} ${unit}`.trim()
}

/** 5 %, middle and 95 % of the members. */
export const modelled = ({ low, middle, high, measured: { unit } }: Row): string =>
  `${figure(low)}, ${figure(middle)}, ${figure(high)} ${unit}`.trim()

const figure = (value: number): string =>
  Number.isFinite(value) ? Number(value.toPrecision(2)).toString() : 'none'

/** Far: the band reaches it, and the middle does not come near. */
const judgement = ({ holds, near }: Row): 'holds' | 'far' | 'misses' =>
  holds ? (near ? 'holds' : 'far') : 'misses'
