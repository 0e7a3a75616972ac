import type {StationKind} from '../layout/layout.ts'
import type {StepDraft} from './step.ts'
import {struckLines} from './stock-steps.ts'
import {holesOn, stationsOf, type WorkFacts, type WorkGroup} from './work-facts.ts'

/** Mark out and drill the neck; saw the slots and press frets in, or burn the lines. */
export const lineSteps: WorkGroup = (facts) => [
  ...mark(facts),
  ...slots(facts),
  ...holesOn(facts, ['playing face', 'neck back', 'neck end'], {
    of: 'drill-neck',
    after: [...struckLines, 'plane-sides', 'plane', 'glue-head'],
  }),
  ...nutGroove(facts),
  ...dots(facts),
  ...burn(facts),
  ...frets(facts),
]

function mark(facts: WorkFacts): StepDraft[] {
  const {values, design, asWritten, isFretted, hasBoard} = facts
  if (!design.scale?.lines?.length) return []
  const length = values.scale?.length
  const {label, mark: read} = design.scale.lines.at(-1)!
  const isEarly = isFretted && hasBoard
  return [
    {
      id: 'mark-lines',
      kind: 'mark-lines',
      facts: {
        of: 'mark-lines',
        isSanded: !isFretted,
        onBoard: isEarly,
        fretted: isFretted,
        length: length ? asWritten(length) : {mm: design.scale.lengthMm ?? 0},
        last: {label, mark: read},
      },
      tool: 'knife',
      stations: stationsOf(design.layout, markedKinds(facts)),
      after: [
        'mark-lines-stick',
        ...(isEarly
          ? ['plane', 'trim']
          : [...struckLines, 'plane-sides', ...(isFretted ? ['plane'] : ['sand'])]),
      ],
    },
  ]
}

/** What is drilled is marked where it is drilled; what has no holes yet is marked with the lines. */
function markedKinds({design}: WorkFacts): StationKind[] {
  const drilled = (design.holes ?? []).map(({of}) => of)
  const has = (start: string) => drilled.some((of) => of.startsWith(start))
  return [
    'nut',
    'line',
    'dot',
    'box edge',
    'bridge',
    ...(has('tuners') ? [] : ['tuner' as const]),
    ...(has('screws') ? [] : ['screw' as const]),
    ...(has('anchors') ? [] : ['anchor' as const]),
  ]
}

function slots({design, isFretted, hasZero, hasBoard}: WorkFacts): StepDraft[] {
  if (!isFretted && !hasZero) return []
  const {slotWidthMm: kerfMm, slotDepthMm: depthMm} = design.neck?.fretting ?? {}
  const isSet = kerfMm !== undefined || depthMm !== undefined
  return [
    {
      id: 'slot-frets',
      kind: 'slot-frets',
      facts: {
        of: 'slot-frets',
        setting: isSet ? {kerfMm, depthMm} : undefined,
        onBoard: hasBoard,
        hasZero,
        lastMark: isFretted ? design.scale?.lines?.at(-1)?.mark : undefined,
      },
      tool: 'fret saw',
      after: [...(isFretted ? ['mark-lines'] : []), 'plane', ...(hasBoard ? [] : ['plane-sides'])],
    },
  ]
}

/** Cut the groove that the nut's rod lies in, once the rod is there to try in it. */
function nutGroove({values: {nut}, asWritten}: WorkFacts): StepDraft[] {
  if (!nut?.groove?.mm) return []
  const {groove, diameter} = nut
  return [
    {
      id: 'groove-nut',
      kind: 'groove-nut',
      facts: {
        of: 'groove-nut',
        setting: {deep: asWritten(groove), wide: diameter && asWritten(diameter)},
      },
      tool: 'file',
      stations: [],
      after: [...struckLines, 'glue-up-face', 'glue-up-board', 'plane-sides', 'shape-head', 'cut-rod-nut'],
    },
  ]
}

function dots({values, design, isFretted}: WorkFacts): StepDraft[] {
  const made = values.markings?.dots?.value ?? ''
  if (!design.scale?.dots?.length || !/inlai|drill/i.test(made)) return []
  return [
    {
      id: 'drill-neck-dots',
      kind: 'drill-neck',
      facts: {of: 'drill-neck-dots'},
      tool: 'hand drill',
      after: ['mark-lines', 'plane-sides', 'glue-up-board', ...(isFretted ? [] : ['sand'])],
    },
  ]
}

function burn({values}: WorkFacts): StepDraft[] {
  const burnt = (['lines', 'dots'] as const).filter((key) =>
    /burn/i.test(values.markings?.[key]?.value ?? ''),
  )
  if (burnt.length === 0) return []
  return [
    {
      id: 'burn-marks',
      kind: 'burn-marks',
      facts: {of: 'burn-marks', burnt},
      tool: 'hot pen',
      after: ['mark-lines', 'sand', 'plane-sides'],
    },
  ]
}

function frets({design, isFretted, hasZero}: WorkFacts): StepDraft[] {
  if (!isFretted && !hasZero) return []
  const {wireMm, pieces = [], overhangMm = 0} = design.neck?.fretting ?? {}
  return [
    {
      id: 'fret',
      kind: 'fret',
      facts: {
        of: 'fret',
        setting: wireMm === undefined ? undefined : {pieces: pieces.length, wireMm, overhangMm},
        isFretted,
        hasZero,
      },
      tool: 'hammer',
      after: ['slot-frets', 'glue-up-board', 'plane-sides', 'sand-board', 'sand', 'stain*'],
    },
    {id: 'fret-ends', kind: 'fret-ends', facts: {of: 'fret-ends'}, tool: 'file', after: ['fret']},
  ]
}
