import {expect, test} from 'vitest'
import {progressLine, progressTo} from '../../site/make/progress.ts'

test('work that takes long says how far it is, and about how long the rest takes', () => {
  expect(progressLine('Making', {done: 25, of: 100}, 10_000)).toBe('Making 25 of 100, about 30 s more')
  expect(progressLine('Making', {done: 10, of: 1000}, 10_000)).toBe('Making 10 of 1000, about 17 min more')
  expect(progressLine('Making', {done: 100, of: 100}, 10_000)).toBe('Making 100 of 100')
  expect(progressLine('Reading', {done: 7}, 10_000)).toBe('Reading 7')
})

test('nothing of that goes into a file, or before anybody wonders', () => {
  for (const isTTY of [true, false]) {
    const written: unknown[] = []
    const {told, end} = progressTo({isTTY, write: (text: unknown) => written.push(text) > 0})
    told('Making', 1, 2)
    end()
    expect(written).toEqual([])
  }
})
