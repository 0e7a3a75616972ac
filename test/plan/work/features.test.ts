import {describe, expect, test} from 'vitest'
import {changed} from '../../support/changed.ts'
import {planOf} from '../../support/plan-of.ts'

// Which steps and cautions a feature of a design brings: the order of work is common practice, no source; the
// cautions' own sources stand in the table of hazards.

// Nothing is proposed for an instrument that exists.
const plain = `
title: Slipway
status: strung up
box: {wood: basswood, length: 10, width: 7, depth: 2}
scale: {length: 24 1/4}
strings: [D3 .030w, A3 .020w, D4 .013]
neck: {width: 1 1/2, thickness: 3/4, wood: poplar}
head: {joint: straight}
`
const nothing = [
  'box-prepare',
  'mill',
  'rip',
  'plane',
  'mark-lines-stick',
  'plane-sides',
  'shape-head',
  'sand',
  'mark-lines',
]
const atTheEnd = ['fasten-hardware', 'fasten', 'string', 'set-up']

interface Feature {
  changes: Record<string, string>
  from?: Record<string, string>
  steps: string[]
  cautions: string[]
}

const features: Record<string, Feature> = {
  fretted: {
    changes: {'scale.fretted': 'true'},
    steps: ['slot-frets', 'fret', 'fret-ends'],
    cautions: ['fret-wire', 'fret-ends'],
  },
  'a neck that runs through': {
    changes: {'neck.joins': 'through'},
    // The neck goes in while the box is open.
    steps: ['notch-box', 'cut-down', 'fasten-top'],
    cautions: ['chisel'],
  },
  'a scarfed head': {
    changes: {'head.joint': 'scarf'},
    steps: ['saw-scarf', 'glue-head', 'mark-lines-face'],
    cautions: ['scarf-saw'],
  },
  stain: {
    changes: {finish: '[{kind: spirit stain}]'},
    steps: ['stain'],
    cautions: ['oil-rags', 'solvents'],
  },
  oil: {changes: {finish: '[{kind: oil}]'}, steps: ['finish-oil'], cautions: ['oil-rags']},
  lacquer: {
    changes: {finish: '[{kind: lacquer}]'},
    steps: ['finish-lacquer'],
    cautions: ['solvents', 'lacquer-mist'],
  },
  'a second coat of something else': {
    from: {finish: '[{kind: oil}]'},
    changes: {finish: '[{kind: oil}, {kind: shellac}]'},
    steps: ['finish-shellac'],
    cautions: ['solvents'],
  },
  'a pickup to solder': {
    changes: {pickup: '{kind: piezo}'},
    steps: ['wire'],
    cautions: ['mains-power', 'solder'],
  },
  'a jack to drill for': {
    from: {pickup: '{kind: piezo}'},
    changes: {'pickup.jack': '{hole: 3/8, in: side}'},
    steps: ['drill-box'],
    cautions: ['drill-clamp'],
  },
  redcedar: {
    changes: {'box.wood': 'western redcedar'},
    steps: [],
    cautions: ['redcedar-dust'],
  },
  rosewood: {
    changes: {'neck.wood': 'indian rosewood'},
    steps: [],
    cautions: ['rosewood-dust', 'protected-wood', 'oily-wood'],
  },
  'burnt marks': {
    changes: {'markings.lines': 'burnt'},
    steps: ['burn-marks'],
    cautions: ['burn-marks'],
  },
  'an old box whose paper comes off': {
    changes: {'box.top': '{thickness: 1/8, paper: strip}'},
    steps: ['box-strip'],
    cautions: [],
  },
  'a short part': {
    changes: {parts: '[{name: saddle, wood: poplar, length: 2, width: 1/2, thickness: 1/4}]'},
    steps: ['rip-small', 'trim', 'fit-parts'],
    cautions: ['short-part', 'planer'],
  },
  'strips glued up': {
    changes: {'neck.wood': '', 'neck.laminations': '[{wood: poplar, thickness: 3/4, strips: 3}]'},
    steps: ['plane-faces', 'glue-up'],
    cautions: [],
  },
  'a cap': {
    changes: {'neck.cap': '{wood: poplar, thickness: 1/16}'},
    steps: ['glue-up-face', 'mark-lines-face'],
    cautions: ['planer'],
  },
  'a fingerboard': {
    changes: {fingerboard: '{wood: poplar, thickness: 1/4, from: 0, to: 16}'},
    steps: ['glue-up-board', 'mark-lines-board'],
    cautions: ['planer'],
  },
  'a plate on the head': {
    changes: {'head.plate': '{wood: poplar, thickness: 1/16}'},
    steps: ['glue-up-plate', 'rip-small', 'trim'],
    cautions: ['planer', 'short-part'],
  },
  'rounded back edges': {
    changes: {'neck.round-over': '1/4'},
    steps: ['round-over'],
    cautions: ['router-direction'],
  },
  'a rod for a nut': {
    changes: {nut: '{kind: rod, diameter: 3/16}'},
    steps: ['cut-rod-nut', 'groove-nut'],
    cautions: ['rods'],
  },
  'a rod for a bridge': {
    changes: {bridge: '{kind: rod}'},
    steps: ['cut-rod-bridge'],
    cautions: ['rods'],
  },
  'a sound hole': {
    changes: {'box.holes': '[{diameter: 1/2, along: 2, off: 2 1/4}]'},
    steps: ['drill-top'],
    cautions: ['drill-clamp'],
  },
  'a block to screw into': {
    changes: {'box.blocks': '[{wood: poplar, along: 2, off: 0, length: 1, width: 4, thickness: 3/8}]'},
    steps: ['fit-blocks', 'rip-small', 'trim'],
    cautions: ['short-part'],
  },
  tuners: {
    changes: {tuners: '{post-hole: 1/4, at: [-2, -4, -3], off: [-3/8, -3/8, 3/8]}'},
    steps: ['drill-head'],
    cautions: ['drill-clamp'],
  },
  ferrules: {
    changes: {anchors: '{kind: ferrule, at: 26 3/4, spacing: 1/2, body: 5/16, string-hole: 3/32}'},
    steps: ['drill-neck'],
    cautions: ['drill-clamp'],
  },
  'dots set in': {
    from: {scale: '{length: 24 1/4, dots: [5, 7, 12]}'},
    changes: {markings: '{dots: inlaid}'},
    steps: ['drill-neck-dots'],
    cautions: [],
  },
  'a top that is screwed down': {
    changes: {'box.top': '{held: screwed}'},
    steps: ['fasten-top'],
    cautions: [],
  },
}

const workOf = (frontMatter: string) => {
  const {work = [], cautions = []} = planOf(frontMatter).plan
  return {steps: work.map(({id}) => id), cautions: cautions.map(({id}): string => id), work}
}

test('a plain build has the plain steps', () => {
  expect(workOf(plain).steps).toEqual([...nothing, ...atTheEnd])
})

describe.each(Object.entries(features))('%s', (_, {from = {}, changes, steps, cautions}) => {
  const before = workOf(changed(plain, from))
  const after = workOf(changed(plain, {...from, ...changes}))
  const added = (key: 'steps' | 'cautions') => after[key].filter((id) => !before[key].includes(id)).sort()
  const gone = (key: 'steps' | 'cautions') => before[key].filter((id) => !after[key].includes(id))

  test('adds exactly its own steps', () => {
    expect({added: added('steps'), gone: gone('steps')}).toEqual({added: [...steps].sort(), gone: []})
  })

  test('adds exactly its own cautions, each beside a step', () => {
    expect(added('cautions')).toEqual([...cautions].sort())
    const beside = after.work.flatMap((step) => step.cautions)
    for (const id of cautions) expect(beside).toContain(id)
  })
})
