import { describe, expect, it } from 'vitest'
import { exampleLedger } from '../../fixtures/example-ledger.ts'
import type { BandedRow } from '../../worker/answers.ts'
import { exports, keptPlaces, sources } from './places.ts'
import { drawRiver, tides, widthOfFed } from './rivers.ts'
import { riverOf } from './streams.ts'

const month = { from: 20_390, to: 20_420 }
const whole = { from: 20_300, to: 20_420 }
const sum = (numbers: readonly number[]) => numbers.reduce((a, b) => a + b, 0)

function drawn(width: number, span = month) {
  const { ledger } = exampleLedger(span)
  const rivers = [riverOf(ledger, 'N'), riverOf(ledger, 'P')]
  const perFed = widthOfFed(rivers, width)
  const { above, below } = tides(rivers, perFed)
  return rivers.map((river) => ({ river, perFed, drawing: drawRiver(river, width, perFed, above, below) }))
}

describe('the rivers', () => {
  it('are together as wide as the amounts that crossed the edge of the system', () => {
    const { ledger } = exampleLedger(month)
    for (const { river, perFed, drawing } of drawn(540)) {
      const rows = ledger.rows.filter(({ atom }) => atom === river.atom)
      const came = sum(rows.filter(({ from }) => from.startsWith('outside.')).map((row) => row.amount_umol))
      const left = sum(rows.filter(({ to }) => to.startsWith('outside.')).map((row) => row.amount_umol))
      expect(sum(drawing.sources.map(({ width }) => width))).toBeCloseTo((came / river.fed_umol) * perFed, 6)
      expect(sum(drawing.exports.map(({ width }) => width))).toBeCloseTo((left / river.fed_umol) * perFed, 6)
    }
  })

  it('give the same width to the same share of the feed, for nitrogen and for phosphorus', () => {
    const feeds = drawn(540).map(({ drawing }) => drawing.sources[0]?.width)
    expect(feeds[0]).toBeGreaterThan(50)
    expect(feeds[1]).toBeCloseTo(feeds[0] ?? 0, 6)
  })

  it('draw rise and fall of the basin to the scale of the streams', () => {
    for (const { river, perFed, drawing } of drawn(358)) {
      drawing.parts.forEach((part, i) => {
        const change = (river.basins[i]?.amount_umol ?? 0) / river.fed_umol
        expect(part.rise - part.fall).toBeCloseTo(change * perFed, 6)
      })
    }
  })

  it('keep order and place when the span or the atom changes', () => {
    const placesOf = (span: typeof month) =>
      drawn(540, span).map(({ drawing }) =>
        [...drawing.sources, ...drawing.exports].map(({ stream, x }) => [stream.place.account, x]),
      )
    const [nitrogen, phosphorus] = placesOf(month)
    expect(placesOf(whole)[0]).toEqual(nitrogen)
    expect(phosphorus).toEqual(nitrogen)
  })

  it('never run into their neighbours, also on a telephone', () => {
    for (const { river, perFed, drawing } of drawn(358)) {
      for (const side of [drawing.sources, drawing.exports]) {
        for (let i = 1; i < side.length; i += 1) {
          const [left, right] = [side[i - 1], side[i]]
          if (!left || !right) continue
          const halves = ((left.stream.high_umol + right.stream.high_umol) / river.fed_umol) * perFed * 0.5
          expect(right.x - left.x).toBeGreaterThan(halves)
        }
      }
    }
  })
})

describe('the labels of a system with everything', () => {
  const { ledger } = exampleLedger(month)
  const everything = {
    from: sources.map(({ account }) => account),
    to: exports.map(({ account }) => account),
  }
  const labelsOn = (width: number) => {
    const { sources: above, exports: below } = drawRiver(riverOf(ledger, 'N', everything), width, 100, 10, 10)
    return [above, below]
  }

  it.each([358, 550])('do not touch in a picture of %i px', (width) => {
    for (const side of labelsOn(width)) {
      for (const row of new Set(side.map(({ labelY }) => labelY))) {
        const inRow = side.filter(({ labelY }) => labelY === row)
        inRow.slice(1).forEach((right, i) => {
          const left = inRow[i] ?? right
          const letters = [left, right].map(({ stream }) =>
            Math.max(...stream.place.label.map((line) => line.length)),
          )
          expect(right.labelX - left.labelX).toBeGreaterThan(7.6 * 0.5 * sum(letters))
        })
      }
    }
  })

  it('stay inside the picture', () => {
    for (const { stream, labelX } of labelsOn(358).flat()) {
      const half = 3.8 * Math.max(...stream.place.label.map((line) => line.length))
      expect(labelX - half).toBeGreaterThan(0)
      expect(labelX + half).toBeLessThan(358)
    }
  })

  it('stand in one row where there is room', () => {
    for (const side of labelsOn(1200)) expect(new Set(side.map(({ labelY }) => labelY)).size).toBe(1)
  })
})

describe('a place in the picture', () => {
  it('is kept in a span without a water change, since the log has had one', () => {
    const { ledger } = exampleLedger(month)
    const dry = { ...ledger, rows: ledger.rows.filter(({ process }) => process !== 'water change') }
    const kept = keptPlaces([{ day: 20_310, kind: 'water change', volume_L: 30 }])
    const accounts = (from: typeof ledger) =>
      riverOf(from, 'N', kept).exports.map(({ place }) => place.account)
    expect(accounts(dry)).toEqual(accounts(ledger))
    expect(
      riverOf(dry, 'N', kept).exports.find(({ place }) => place.account === 'outside.discarded-water'),
    ).toMatchObject({ amount_umol: 0 })
  })
})

describe('the place of media that were placed', () => {
  it('is that of the medium', () => {
    const placed = (medium?: 'carbon') =>
      keptPlaces([{ day: 20_310, kind: 'media placed', mass_g: 100, ...(medium && { medium }) }]).to
    expect([placed(), placed('carbon')]).toEqual([['media.ferric'], ['media.carbon']])
  })
})

describe('the streams of a ledger', () => {
  const { ledger } = exampleLedger(month)
  const row = (change: Partial<BandedRow>): BandedRow => ({
    process: 'ferric-media',
    instance: '',
    atom: 'P',
    from: 'water.phosphate',
    to: 'media.ferric',
    amount_umol: 100,
    low_umol: 60,
    high_umol: 150,
    members: [60, 100, 150],
    ...change,
  })

  it('count what ferric media take out of the water as leaving, and their swap as nothing more', () => {
    const swapped = row({
      process: 'media removed',
      from: 'media.ferric',
      to: 'outside.spent-media',
      amount_umol: 80,
    })
    const river = riverOf({ ...ledger, rows: [row({}), swapped] }, 'P')
    expect(river.exports.map(({ place, amount_umol }) => [place.account, amount_umol])).toEqual([
      ['media.ferric', 100],
    ])
    expect(river.sources).toEqual([])
  })

  it('tell a flow that ran backwards as one that came in', () => {
    const river = riverOf(
      {
        ...ledger,
        rows: [row({ amount_umol: -40, low_umol: -70, high_umol: -10, members: [-70, -40, -10] })],
      },
      'P',
    )
    expect(river.sources[0]).toMatchObject({ amount_umol: 40, low_umol: 10, high_umol: 70 })
    expect(river.exports).toEqual([])
  })

  it('measure by all that came in where nothing was fed', () => {
    const dosed = row({ process: 'dose', atom: 'N', from: 'outside.dose', to: 'water.ammonia' })
    expect(riverOf({ ...ledger, rows: [dosed] }, 'N').fed_umol).toBe(100)
  })
})
