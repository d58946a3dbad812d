import { expect, test } from 'vitest'
import { answerable, issueInWords, readAnswers } from './read-answers.ts'

test('traits of the key and of the finer kinds are read', () => {
  const given = { colour: 'brown', cell_shape: 'oval_in_jelly' }
  expect(readAnswers(given)).toEqual({ ok: true, answers: given })
  expect(answerable().map(({ key }) => key)).toContain('thread_shape')
})

test('nothing noted is an answer too', () => {
  expect(readAnswers({})).toEqual({ ok: true, answers: {} })
})

test('every issue is told at once, with what is accepted', () => {
  const read = readAnswers({ taste: 'salt', colour: 'blue', form: 3 })
  expect(read.ok ? [] : read.issues.map(({ code, where, got }) => [code, where, got])).toEqual([
    ['unknown-trait', 'Traits', 'taste'],
    ['unknown-state', 'colour', 'blue'],
    ['unknown-state', 'form', '3'],
  ])
  expect(read.ok ? '' : read.issues.map(issueInWords)[1]).toMatch(
    /^colour: "blue" is not known\. Give one of bright_green, .*; leave the trait out where it was not looked at\.$/,
  )
})

test.each([[null], [[]], ['brown'], [7], [undefined]])('%j is no object of answers', (given) => {
  expect(readAnswers(given)).toMatchObject({ ok: false, issues: [{ code: 'not-answers' }] })
})

test.each(['__proto__', 'constructor'])('the name %s is no trait', (name) => {
  expect(readAnswers(JSON.parse(`{"${name}":"brown"}`))).toMatchObject({ ok: false })
})
