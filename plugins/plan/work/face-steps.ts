import {glueWait, type StepDraft, stationsOf, type WorkFacts, type WorkGroup} from './step.ts'

/** Glue on what comes after the scarf, plane the sides, round the back. */
export const faceSteps: WorkGroup = (facts) => [
  ...face(facts),
  ...board(facts),
  ...sides(facts),
  ...round(facts),
]

function face(facts: WorkFacts): StepDraft[] {
  const {values, design, size} = facts
  const late = (design.neck?.layup?.layers ?? []).filter(
    ({of, beforeScarf}) => !beforeScarf && of.startsWith('neck.laminations'),
  )
  if (late.length === 0 && !values.neck?.cap) return []
  const starts = late.flatMap(({fromMm}) => (fromMm === undefined ? [] : [`from ${size(fromMm)}`]))
  return [
    {
      id: 'glue-up-face',
      kind: 'glue-up',
      step: 'Glue the face on',
      does: 'Plane the stick’s face, then glue at once.',
      tool: 'glue and clamps',
      setting: [...starts, `on for ${glueWait(facts).clampsStay}`].join(', '),
      waitH: glueWait(facts).waitH,
      after: ['plane', 'glue-head'],
      words: ['face glued', 'cap', 'glue the face', 'face on'],
    },
  ]
}

function board(facts: WorkFacts): StepDraft[] {
  const {values, size} = facts
  const {fingerboard} = values
  if (!fingerboard) return []
  const {from, to} = fingerboard
  return [
    {
      id: 'glue-up-board',
      kind: 'glue-up',
      step: 'Glue the fingerboard on',
      does: 'Centre line on centre line; pins against sliding.',
      tool: 'glue and clamps',
      setting: `from ${size(from?.mm ?? 0)}${to ? ` to ${size(to.mm)}` : ''}, on for ${glueWait(facts).clampsStay}`,
      waitH: glueWait(facts).waitH,
      after: ['plane', 'glue-head', 'glue-up-face', 'slot-frets'],
      words: ['fingerboard'],
    },
  ]
}

function sides({values, design, size}: WorkFacts): StepDraft[] {
  const {nut, tail} = values.neck?.width ?? {}
  if (!values.neck) return []
  const tapers = nut && tail && tail.mm !== nut.mm
  return [
    {
      id: 'plane-sides',
      kind: 'plane',
      step: 'Plane the sides',
      does: 'To the line, the same off each; tail end square.',
      tool: 'plane, or planer',
      setting: nut && `${size(nut.mm)} wide${tapers ? ` at the nut, ${size(tail.mm)} at the tail` : ''}`,
      stations: stationsOf(design.layout, ['tail end']),
      after: ['plane', 'glue-head', 'glue-up-face', 'glue-up-board', 'glue-up-plate'],
      check: 'Centre line in the middle at both ends.',
      words: ['sides', 'planed to width', 'taper*'],
    },
  ]
}

function round({design, size}: WorkFacts): StepDraft[] {
  const {roundOver} = design.neck ?? {}
  const {fromMm, toMm, radiusMm, runInMm} = roundOver ?? {}
  if (fromMm === undefined || toMm === undefined || radiusMm === undefined || runInMm === undefined) return []
  // What the cutter reaches past its own centre is counted in.
  const startMm = fromMm + runInMm
  const stopMm = toMm - runInMm
  const stops =
    stopMm > startMm
      ? `, bit’s centre from ${size(startMm)} to ${size(stopMm)} (it cuts ${size(runInMm)} past)`
      : ''
  return [
    {
      id: 'round-over',
      kind: 'round-over',
      does: 'Stops clamped on; two passes; file the run-outs.',
      tool: 'router, or rasp',
      setting: `radius ${size(radiusMm)}${stops}`,
      stations: stationsOf(design.layout, ['round-over']),
      after: ['plane-sides', 'shape-head', 'drill-neck', 'glue-up-face', 'glue-up-board'],
      check: 'Both edges start and stop alike.',
    },
  ]
}
