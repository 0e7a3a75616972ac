import type {StepDraft} from './step.ts'
import {struckLines} from './stock-steps.ts'
import {glueWait, holesOn, partsOf, stationsOf, type WorkFacts, type WorkGroup} from './work-facts.ts'

/** Saw and glue the scarf, glue a plate on, shape the head and drill it. */
export const headSteps: WorkGroup = (facts) => [
  ...scarf(facts),
  ...plate(facts),
  ...shape(facts),
  ...holesOn(facts, ['head'], {of: 'drill-head', after: [...struckLines, 'shape-head', 'glue-head']}),
]

function scarf(facts: WorkFacts): StepDraft[] {
  const {design} = facts
  const {scarf: sawn} = design.neck ?? {}
  if (!sawn) return []
  const {angleDeg, fromSquareDeg, slope, faceMm, runMm} = sawn
  const {waitH, clampsH} = glueWait(facts)
  return [
    {
      id: 'saw-scarf',
      kind: 'saw-scarf',
      facts: {of: 'saw-scarf', setting: {angleDeg, fromSquareDeg, slope, runMm}, faceMm},
      tool: 'carrier',
      stations: stationsOf(design.layout, ['slope']),
      after: ['plane', 'glue-up', 'mark-lines-stick'],
    },
    {
      id: 'glue-head',
      kind: 'glue-head',
      facts: {of: 'glue-head', setting: {clampsH}},
      tool: 'clamps',
      waitH,
      after: ['saw-scarf'],
    },
  ]
}

function plate(facts: WorkFacts): StepDraft[] {
  if (!facts.values.head?.plate) return []
  return [
    {
      id: 'glue-up-plate',
      kind: 'glue-up',
      facts: {of: 'glue-up-plate'},
      tool: 'clamps',
      parts: partsOf(facts.design, (path) => path === 'head.plate'),
      waitH: glueWait(facts).waitH,
      after: ['plane', 'trim', 'glue-head'],
    },
  ]
}

function shape({values, design}: WorkFacts): StepDraft[] {
  const {head} = design.neck ?? {}
  if (!head) return []
  const {joint, angleDeg, thicknessMm, retainer} = head
  const dropMm = values.head?.drop?.mm ?? 0
  return [
    {
      id: 'shape-head',
      kind: 'shape-head',
      facts: {
        of: 'shape-head',
        setting: {thicknessMm, retainer},
        angleDeg: joint === 'solid' ? angleDeg : undefined,
        dropMm: joint === 'straight' && dropMm > 0 ? dropMm : undefined,
      },
      tool: 'saw',
      stations: stationsOf(design.layout, ['head end']),
      after: [...struckLines, 'plane-sides', 'plane', 'glue-head', 'glue-up-plate'],
    },
  ]
}
