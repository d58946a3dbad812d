import { sumOfRows } from '@holdfast/inference/summed'
import { atomNames } from '../../figure/atoms.ts'
import { type Sentence, sentenceText } from '../../figure/sentence.ts'
import type { LedgerGround } from './derivations.ts'
import { basinFigure, shareFigure, streamFigure } from './figures.ts'
import { basinOf } from './places.ts'
import { type Basin, forward, type River, type Stream } from './streams.ts'

interface Candidate {
  /** How much it is worth knowing: a share of what was fed. */
  readonly weight: number
  readonly sentence: Sentence
}

/** The three things worth knowing about a span, the weightiest first. */
export function threeThings(rivers: readonly River[], ground: LedgerGround): readonly Sentence[] {
  return rivers
    .flatMap((river) => [
      given(river, ground),
      carried(river, ground),
      kept(river, ground),
      unexplained(river, ground),
      otherSource(river, ground),
    ])
    .filter((candidate): candidate is Candidate => candidate !== undefined)
    .sort((a, b) => b.weight - a.weight)
    .slice(0, 3)
    .map((candidate) => candidate.sentence)
}

/** What a screen reader hears in place of a river, and what stands over it. */
export function riverSentence(river: River, ground: LedgerGround): string {
  const largest = (streams: readonly Stream[]) =>
    [...streams].sort((a, b) => b.amount_umol - a.amount_umol)[0]
  const source = largest(river.sources)
  const way = largest(river.exports)
  const parts: Sentence[] = []
  if (source && source.amount_umol > 0)
    parts.push([
      `Most ${atomNames[river.atom]} comes in with ${lower(source.place.title)}: `,
      streamFigure(source, river, ground),
      '. ',
    ])
  if (way && way.amount_umol > 0)
    parts.push([`Most leaves as ${lower(way.place.title)}: `, streamFigure(way, river, ground), '. '])
  return parts.map(sentenceText).join('').trim()
}

/** Rock and algae can give to the water as much as the feed tin; the streams across the edge hide that. */
function given(river: River, ground: LedgerGround): Candidate | undefined {
  if (river.atom !== 'P') return undefined
  const giving = ground.answer.ledger.rows
    .map(forward)
    .filter((row) => row.atom === 'P' && basinOf(row.from) === 'rock' && basinOf(row.to) === 'water')
  const amount = sumOfRows(giving, ground.answer.ledger.weights)
  const weight = amount.amount_umol / river.fed_umol
  if (weight < 0.1) return undefined
  return {
    weight: weight + 0.5,
    sentence: [
      'Rock and sand give the water as much phosphorus as ',
      shareFigure(
        amount,
        river,
        {
          id: `share.${river.atom}.rock`,
          name: 'Phosphorus out of rock and sand, as a share of what you fed',
        },
        ground,
        giving,
      ),
      ' of what you feed.',
    ],
  }
}

function carried(river: River, ground: LedgerGround): Candidate | undefined {
  const known = river.exports.filter((stream) => !stream.place.dashed)
  const way = [...known].sort((a, b) => b.amount_umol - a.amount_umol)[0]
  if (!way || way.amount_umol <= 0) return undefined
  const rows = known.flatMap((stream) => stream.rows)
  const all = sumOfRows(rows, ground.answer.ledger.weights)
  return {
    weight: all.amount_umol / river.fed_umol,
    sentence: [
      'By ways that are known, ',
      shareFigure(
        all,
        river,
        {
          id: `share.${river.atom}.leaves`,
          name: `All ${atomNames[river.atom]} that leaves, as a share of what you fed`,
        },
        ground,
        rows,
      ),
      ` of the ${atomNames[river.atom]} you feed leaves again. ${way.place.title} carries the most of it: `,
      streamFigure(way, river, ground),
      '.',
    ],
  }
}

function kept(river: River, ground: LedgerGround): Candidate | undefined {
  const basin = [...river.basins].sort((a, b) => Math.abs(b.amount_umol) - Math.abs(a.amount_umol))[0]
  if (!basin || basin.amount_umol === 0) return undefined
  return {
    weight: Math.abs(basin.amount_umol) / river.fed_umol + 0.2,
    sentence: [
      `What your system holds of ${atomNames[river.atom]} ${tide(basin)} most in ${lower(basin.place.title)}: by `,
      basin.amount_umol > 0 ? basinFigure(basin, river, ground) : turned(basin, river, ground),
      '.',
    ],
  }
}

const tide = (basin: Basin) => (basin.amount_umol > 0 ? 'rises' : 'falls')

/** A fall is said as a positive number; where the interval reaches across nought it keeps its sign. */
function turned(basin: Basin, river: River, ground: LedgerGround) {
  const figure = basinFigure(basin, river, ground)
  return { ...figure, id: `${figure.id}.fall`, value: -figure.value, low: -figure.high, high: -figure.low }
}

function unexplained(river: River, ground: LedgerGround): Candidate | undefined {
  const stream = [...river.sources, ...river.exports].find(
    (candidate) => candidate.place.dashed && candidate.amount_umol > 0,
  )
  if (!stream) return undefined
  return {
    weight: stream.amount_umol / river.fed_umol + 0.1,
    sentence: [
      'Your log cannot explain ',
      streamFigure(stream, river, ground),
      ` of the ${atomNames[river.atom]}: the dashed stream.`,
    ],
  }
}

function otherSource(river: River, ground: LedgerGround): Candidate | undefined {
  const other = [...river.sources]
    .filter((stream) => stream.place.account !== 'outside.feed')
    .sort((a, b) => b.amount_umol - a.amount_umol)[0]
  if (!other || other.amount_umol / river.fed_umol < 0.05) return undefined
  return {
    weight: other.amount_umol / river.fed_umol + 0.15,
    sentence: [
      `${other.place.title} brings in `,
      streamFigure(other, river, ground),
      `, beside what you feed.`,
    ],
  }
}

const lower = (text: string) => text.charAt(0).toLowerCase() + text.slice(1)
