import type {StepDraft} from './step.ts'
import {struckLines} from './stock-steps.ts'
import {glueWait, partsOf, stationsOf, type WorkFacts, type WorkGroup} from './work-facts.ts'

/** Glue on what comes after the scarf, plane the sides, round the back. */
export const faceSteps: WorkGroup = (facts) => [
  ...face(facts),
  ...board(facts),
  ...sides(facts),
  ...cutDown(facts),
  ...radius(facts),
  ...round(facts),
]

function face(facts: WorkFacts): StepDraft[] {
  const {values, design} = facts
  const late = (design.neck?.layup?.layers ?? []).filter(
    ({of, beforeScarf}) => !beforeScarf && of.startsWith('neck.laminations'),
  )
  if (late.length === 0 && !values.neck?.cap) return []
  const starts = late.flatMap(({fromMm}) => (fromMm === undefined ? [] : [fromMm]))
  const {waitH, clampsH} = glueWait(facts)
  return [
    {
      id: 'glue-up-face',
      kind: 'glue-up',
      facts: {of: 'glue-up-face', setting: {fromMm: starts.length > 0 ? starts : undefined, clampsH}},
      tool: 'clamps',
      parts: partsOf(design, (path) => path === 'neck.cap' || late.some(({of}) => of === path)),
      waitH,
      after: ['plane', 'trim', 'glue-head'],
    },
  ]
}

function board(facts: WorkFacts): StepDraft[] {
  const {fingerboard} = facts.values
  if (!fingerboard) return []
  const {from, to} = fingerboard
  const {waitH, clampsH} = glueWait(facts)
  return [
    {
      id: 'glue-up-board',
      kind: 'glue-up',
      facts: {of: 'glue-up-board', setting: {fromMm: from?.mm ?? 0, toMm: to?.mm, clampsH}},
      tool: 'clamps',
      parts: partsOf(facts.design, (path) => path === 'fingerboard'),
      waitH,
      after: [
        'plane',
        'trim',
        'glue-head',
        'glue-up-face',
        'slot-frets',
        'mark-lines-stick',
        'mark-lines-face',
      ],
    },
  ]
}

function sides({values, design}: WorkFacts): StepDraft[] {
  const {nut, tail} = values.neck?.width ?? {}
  if (!values.neck) return []
  const tapers = nut && tail && tail.mm !== nut.mm
  return [
    {
      id: 'plane-sides',
      kind: 'plane',
      facts: {of: 'plane-sides', setting: nut && {nutMm: nut.mm, tailMm: tapers ? tail.mm : undefined}},
      tool: 'planer',
      stations: stationsOf(design.layout, ['tail end']),
      parts: partsOf(design, (path) => path === 'neck'),
      after: [...struckLines, 'plane', 'glue-head', 'glue-up-face', 'glue-up-board', 'glue-up-plate'],
    },
  ]
}

/** Cut a neck that runs through down inside the box, so that the top swings free of it. */
function cutDown({design}: WorkFacts): StepDraft[] {
  const {fromMm, toMm, surfaceMm, thicknessMm} = design.neck?.inside ?? {}
  if (fromMm === undefined || toMm === undefined || surfaceMm === undefined || thicknessMm === undefined)
    return []
  if (surfaceMm <= 0) return []
  return [
    {
      id: 'cut-down',
      kind: 'cut-down',
      facts: {of: 'cut-down', setting: {deepMm: surfaceMm, leftMm: thicknessMm, fromMm, toMm}},
      tool: 'saw',
      after: [...struckLines, 'plane-sides'],
    },
  ]
}

function radius({design, isFretted, hasZero}: WorkFacts): StepDraft[] {
  const {radiusMm, checks = []} = design.neck?.boardRadius ?? {}
  const [first] = checks
  if (radiusMm === undefined || !first) return []
  return [
    {
      id: 'sand-board',
      kind: 'sand',
      facts: {
        of: 'sand-board',
        setting: {radiusMm},
        sagittaMm: first.sagittaMm,
        isSlotted: isFretted || hasZero,
      },
      tool: 'block',
      after: ['glue-up-board', 'plane-sides', 'slot-frets'],
    },
  ]
}

function round({design}: WorkFacts): StepDraft[] {
  const {roundOver} = design.neck ?? {}
  const {fromMm, toMm, radiusMm, runInMm} = roundOver ?? {}
  if (fromMm === undefined || toMm === undefined || radiusMm === undefined || runInMm === undefined) return []
  // What the cutter reaches past its own centre is counted in.
  const stops = {fromMm: fromMm + runInMm, toMm: toMm - runInMm, runInMm}
  return [
    {
      id: 'round-over',
      kind: 'round-over',
      facts: {
        of: 'round-over',
        setting: {radiusMm, stops: stops.toMm > stops.fromMm ? stops : undefined},
      },
      tool: 'router',
      stations: stationsOf(design.layout, ['round-over']),
      after: ['plane-sides', 'shape-head', 'drill-neck', 'glue-up-face', 'glue-up-board'],
    },
  ]
}
