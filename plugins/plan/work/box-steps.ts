import {glueWait, holesOn, type StepDraft, type WorkFacts, type WorkGroup} from './step.ts'

/** Until damp wood is dry again (h): common practice, no source. */
const dryH = 24
const bare = ['box-prepare', 'box-strip']

/** Look the box over and clean it, before anything is measured off it. */
export const bareBoxSteps: WorkGroup = (facts) => (facts.values.box ? [prepare(facts), ...strip(facts)] : [])

/** Fit blocks, drill the box, let the neck in. */
export const boxSteps: WorkGroup = (facts) => {
  if (!facts.values.box) return []
  return [
    ...blocks(facts),
    ...holesOn(facts, ['top', 'top inside'], {
      id: 'drill-top',
      kind: 'drill-top',
      does: 'Scrap clamped under; big holes from both sides.',
      after: [...bare, 'fit-blocks'],
    }),
    ...holesOn(facts, ['back', 'side bass', 'side treble', 'head end', 'tail end'], {
      id: 'drill-box',
      kind: 'drill-box',
      does: 'Scrap held inside each wall.',
      after: [...bare, 'fit-blocks'],
    }),
    ...notch(facts),
  ]
}

function prepare({values, asWritten}: WorkFacts): StepDraft {
  const {length, width, depth, top} = values.box!
  const sizes = [length, width, depth].flatMap((one) => (one ? [asWritten(one)] : []))
  const paper = top?.paper?.value === 'keep' ? ' The paper stays.' : ''
  return {
    id: 'box-prepare',
    kind: 'box-prepare',
    does: `Pull nails and staples, wipe out, glue loose corners.${paper}`,
    tool: 'pliers, magnet and rag',
    after: [],
    check: sizes.length > 0 ? `Outside it reads ${sizes.join(' × ')}.` : undefined,
  }
}

function strip({values}: WorkFacts): StepDraft[] {
  if (values.box?.top?.paper?.value !== 'strip') return []
  return [
    {
      id: 'box-strip',
      kind: 'box-strip',
      does: 'Damp the paper, lift it off, wipe the paste away; let it dry flat.',
      tool: 'water and scraper',
      waitH: dryH,
      after: ['box-prepare'],
    },
  ]
}

function blocks(facts: WorkFacts): StepDraft[] {
  const {values, design} = facts
  const count = values.box?.blocks?.length ?? 0
  if (count === 0) return []
  const {waitH, clampsStay} = glueWait(facts)
  return [
    {
      id: 'fit-blocks',
      kind: 'fit-blocks',
      does: `Glue ${count === 1 ? 'the block' : `the ${count} blocks`} in, centred here.`,
      tool: 'glue and clamps',
      setting: `on for ${clampsStay}`,
      stations: (design.box?.blocks ?? []).map(({stationMm, offMm}, i) => ({
        what: `block ${i + 1}, middle`,
        stationMm,
        offMm,
      })),
      waitH,
      after: [...bare, 'rip-small', 'rip'],
    },
  ]
}

function notch({values, design, size, asWritten}: WorkFacts): StepDraft[] {
  const {notch: cut, joins} = design.box?.neck ?? {}
  if (!cut) return []
  const {width, depth} = values.box?.notch ?? {}
  const written =
    width && depth ? [asWritten(width), asWritten(depth)] : [size(cut.widthMm), size(cut.depthMm)]
  return [
    {
      id: 'notch-box',
      kind: 'notch-box',
      does: `Scribe round the neck, saw inside the lines, pare${joins === 'through' ? ', at both ends' : ''}.`,
      tool: 'fine saw and chisel',
      setting: `${written[0]} wide, ${written[1]} deep`,
      after: [...bare, 'plane-sides', 'plane'],
      check: 'Dry-fitted, a string runs down the middle.',
    },
  ]
}
