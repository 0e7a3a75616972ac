import {describe, expect, it} from 'vitest'
import {changesFrom} from '../../plugins/plan/changes.ts'
import {planOf} from '../support/plan-of.ts'

const original = `
title: Needle box one
scale: 24 1/4
strings: [D3 .030w, D4 .013]
neck: {width: 1 1/2, thickness: 3/4}
box: 10 x 7 x 2
`
const changes = (text: string, from = original) => changesFrom(planOf(from).build, planOf(text).build)

describe('what a build changes on the one it was copied from', () => {
  it('is nothing where only spelling and story differ', () => {
    const copy = original.replace('3/4', '19.05 mm').replace('one', 'two').replace('24 1/4', '24.25')
    expect(changes(`${copy}status: strung up\nstarted: 2026-03-07\ntags: [harbour]\n`)).toEqual([])
  })

  it('lists values that differ, that are new and that are gone', () => {
    const copy = original.replace('24 1/4', '25').replace(', thickness: 3/4', '') + 'head: {angle: 14}\n'
    expect(changes(copy)).toEqual([
      {path: 'scale.length', was: '24 1/4', is: '25'},
      {path: 'head.angle', is: '14'},
      {path: 'neck.thickness', was: '3/4'},
    ])
  })

  it('takes what was measured on the original before what was planned', () => {
    const measured = `${original}measured: {scale.length: 24 9/32}\n`
    expect(changes(original, measured)).toEqual([{path: 'scale.length', was: '24 9/32', is: '24 1/4'}])
  })

  it('takes a bridge that is set back behind its line under frets for no other scale', () => {
    const fretted = original.replace('scale: 24 1/4', 'scale: {length: 24 1/4, fretted: true}')
    expect(changes(fretted, `${fretted}measured: {scale.length: 24 13/32}\n`)).toEqual([])
  })

  it('names a string by its note, and one tuned otherwise by its new one', () => {
    expect(changes(original.replace('.013', '.012'))).toEqual([
      {path: 'strings.D4.gauge', was: '.013', is: '.012'},
    ])
    expect(changes(original.replace('D4', 'C4'))).toEqual([{path: 'strings.C4.note', was: 'D4', is: 'C4'}])
    expect(changes(original.replace(', D4 .013', ''))).toEqual([
      {path: 'strings.D4.note', was: 'D4'},
      {path: 'strings.D4.gauge', was: '.013'},
    ])
  })
})
