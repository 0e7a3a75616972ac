import {givenBlocks} from '../box/box-blocks.ts'
import type {StepDraft} from './step.ts'
import {glueWait, holesOn, partsOf, type WorkFacts, type WorkGroup} from './work-facts.ts'

/** Until damp wood is dry again (h): common practice, no source. */
const dryH = 24
const bare = ['box-prepare', 'box-strip']

/** Look the box over and clean it, before anything is measured off it. */
export const bareBoxSteps: WorkGroup = (facts) => (facts.values.box ? [prepare(facts), ...strip(facts)] : [])

/** Fit blocks, drill the box, let the neck in. */
export const boxSteps: WorkGroup = (facts) => {
  const after = [...bare, 'fit-blocks']
  return [
    ...(facts.values.box ? blocks(facts) : []),
    ...holesOn(facts, ['top', 'top inside'], {of: 'drill-top', after}),
    ...holesOn(facts, ['back', 'side bass', 'side treble', 'head end', 'tail end'], {of: 'drill-box', after}),
    ...notch(facts),
  ]
}

function prepare({values, asWritten}: WorkFacts): StepDraft {
  const {length, width, depth, top} = values.box!
  const sizes = [length, width, depth].flatMap((one) => (one ? [asWritten(one)] : []))
  return {
    id: 'box-prepare',
    kind: 'box-prepare',
    facts: {
      of: 'box-prepare',
      keepsPaper: top?.paper?.value === 'keep',
      isStripped: top?.paper?.value === 'strip',
      sizes,
    },
    tool: 'pliers',
    after: [],
  }
}

function strip({values}: WorkFacts): StepDraft[] {
  if (values.box?.top?.paper?.value !== 'strip') return []
  return [
    {
      id: 'box-strip',
      kind: 'box-strip',
      facts: {of: 'box-strip'},
      tool: 'scraper',
      waitH: dryH,
      after: ['box-prepare'],
    },
  ]
}

function blocks(facts: WorkFacts): StepDraft[] {
  const {values, design} = facts
  const count = givenBlocks(values).length
  if (count === 0) return []
  const {waitH, clampsH} = glueWait(facts)
  return [
    {
      id: 'fit-blocks',
      kind: 'fit-blocks',
      facts: {of: 'fit-blocks', setting: {clampsH}, count},
      tool: 'clamps',
      stations: (design.box?.blocks ?? []).map((block) => ({
        what: {block: block.of},
        stationMm: block.stationMm,
        alongMm: block.alongMm,
        offMm: block.offMm,
      })),
      parts: partsOf(design, (path) => path.startsWith('box.')),
      waitH,
      after: [...bare, 'trim', 'rip'],
    },
  ]
}

function notch({values, design, asWritten}: WorkFacts): StepDraft[] {
  const {notch: cut, joins} = design.box?.neck ?? {}
  if (!cut) return []
  const {width, depth} = values.box?.notch ?? {}
  const written =
    width && depth
      ? {width: asWritten(width), depth: asWritten(depth)}
      : {width: {mm: cut.widthMm}, depth: {mm: cut.depthMm}}
  const setting = {...written, tailWidthMm: cut.tailWidthMm, topOffMm: cut.topOffMm}
  return [
    {
      id: 'notch-box',
      kind: 'notch-box',
      facts: {of: 'notch-box', setting, bothEnds: joins === 'through'},
      tool: 'chisel',
      after: [...bare, 'plane-sides', 'plane', 'cut-down'],
    },
  ]
}
