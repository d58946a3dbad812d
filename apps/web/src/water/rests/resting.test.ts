import { describe, expect, it } from 'vitest'
import { sentenceText } from '../../figure/sentence.ts'
import { exampleLedger } from '../../fixtures/example-ledger.ts'
import { exampleOutlook } from '../../fixtures/example-outlook.ts'
import { exampleData } from '../../fixtures/example-system.ts'
import { questionOf } from '../question.ts'
import { spanOf } from '../span.ts'
import { restingOn, roleOf } from './resting.ts'

const worked = {
  data: exampleData,
  ledger: exampleLedger(spanOf('all', exampleData)),
  outlook: exampleOutlook(questionOf(exampleData), ''),
}
const names = (entry: string) => restingOn(entry, worked).map(({ id }) => id)

describe('what rests on an entry', () => {
  it('is for a reading whatever it weighs, and for a change the water that it moved', () => {
    expect(names('reading-9-n')).toContain('stream.N.outside.skimmate')
    expect(names('reading-9-n')).not.toContain('stream.N.outside.discarded-water')
    expect(names('change-3')).toContain('stream.N.outside.discarded-water')
    expect(names('change-3')).not.toContain('stream.N.outside.skimmate')
  })

  it('is every fan, since what was done drives the tanks and what was read weighs them', () => {
    const fans = (entry: string) => names(entry).filter((id) => id.startsWith('fan.nitrate'))
    expect(fans('reading-9-n')).toHaveLength(2)
    expect(fans('change-3')).toEqual(fans('reading-9-n'))
  })

  it('is nothing for an entry of which the model takes nothing', () => {
    expect(names('a note')).toEqual([])
    expect(sentenceText(roleOf('a note', worked))).toContain('The model takes nothing from it')
  })

  it('tells a reading beside what the tanks have that day, and a reading below detection as a limit', () => {
    expect(sentenceText(roleOf('reading-9-n', worked))).toMatch(
      /You read 10 mg\/L NO3, which .* that day the tanks have/,
    )
    expect(sentenceText(roleOf('reading-0-p', worked))).toContain('You read less than 0.03 mg/L PO4')
  })
})
