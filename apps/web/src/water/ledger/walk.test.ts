import { describe, expect, it } from 'vitest'
import { exampleLedger } from '../../fixtures/example-ledger.ts'
import { drawRiver } from './rivers.ts'
import { riverOf } from './streams.ts'
import { walked } from './walk.ts'

const { ledger } = exampleLedger({ from: 20_390, to: 20_420 })
const drawing = drawRiver(riverOf(ledger, 'N'), 500, 200, 40, 40)
const go = (...keys: readonly string[]) =>
  keys.reduce<ReturnType<typeof walked>>((spot, key) => walked(drawing, spot, key) ?? spot, undefined)

describe('walking along a river', () => {
  it('begins with the feed and goes from stream to stream, and stays at the ends', () => {
    expect(go('ArrowRight')).toEqual({ side: 'source', account: 'outside.feed' })
    expect(go('ArrowRight', 'ArrowRight')).toEqual({ side: 'source', account: 'outside.source-water' })
    expect(go('ArrowRight', 'ArrowLeft')).toEqual({ side: 'source', account: 'outside.feed' })
    expect(go('ArrowRight', 'End', 'ArrowRight')).toEqual({ side: 'source', account: 'outside.salt' })
  })

  it('goes down into what the system holds, on to what leaves, and up again', () => {
    expect(go('ArrowRight', 'ArrowDown')?.side).toBe('basin')
    expect(go('ArrowRight', 'ArrowDown', 'ArrowDown')?.side).toBe('export')
    expect(go('ArrowRight', 'ArrowDown', 'ArrowDown', 'ArrowDown')?.side).toBe('export')
    expect(go('ArrowRight', 'ArrowDown', 'ArrowUp')?.side).toBe('source')
  })

  it('leaves other keys to the page', () => {
    expect(walked(drawing, undefined, 'Enter')).toBeUndefined()
  })
})
