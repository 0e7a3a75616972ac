import {inchMm} from '../../tables/units.ts'
import type {StationKind} from '../layout.ts'
import {holesOn, type StepDraft, stationsOf, type WorkFacts, type WorkGroup} from './step.ts'

/** Mark out and drill the neck; saw the slots and press frets in, or burn the lines. */
export const lineSteps: WorkGroup = (facts) => [
  ...mark(facts),
  ...slots(facts),
  ...holesOn(facts, ['playing face', 'neck back', 'neck end'], {
    id: 'drill-neck',
    kind: 'drill-neck',
    does: 'Centre-punch; scrap behind; depth marked on the bit.',
    after: ['plane-sides', 'plane', 'glue-head'],
  }),
  ...dots(facts),
  ...burn(facts),
  ...frets(facts),
]

function mark(facts: WorkFacts): StepDraft[] {
  const {values, design, size, asWritten, isFretted, hasBoard} = facts
  if (!design.scale?.lines?.length) return []
  const length = values.scale?.length
  const reads = length ? asWritten(length) : size(design.scale.lengthMm ?? 0)
  const last = design.scale.lines.at(-1)!
  const isEarly = isFretted && hasBoard
  return [
    {
      id: 'mark-lines',
      kind: 'mark-lines',
      does: isEarly
        ? 'Lines on the fingerboard, the rule left lying; the rest on the neck.'
        : 'All from the nut line, the rule left lying.',
      tool: 'rule and knife',
      stations: stationsOf(design.layout, markedKinds(facts)),
      after: isEarly ? ['plane'] : isFretted ? ['plane-sides', 'plane'] : ['sand', 'plane-sides'],
      check: `Nut line to bridge line reads ${reads}; to ${isFretted ? 'fret' : 'line'} ${last.label}, ${last.mark}.`,
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

function slots({design, units, size, isFretted, hasBoard}: WorkFacts): StepDraft[] {
  if (!isFretted) return []
  const {slotWidthMm, slotDepthMm} = design.neck?.fretting ?? {}
  const fine = (mm: number) => (units === 'in' ? `${(mm / inchMm).toFixed(3)} in` : `${mm.toFixed(2)} mm`)
  const setting = [
    ...(slotWidthMm === undefined ? [] : [`kerf ${fine(slotWidthMm)}`]),
    ...(slotDepthMm === undefined ? [] : [`depth stop ${fine(slotDepthMm)}`]),
  ].join(', ')
  return [
    {
      id: 'slot-frets',
      kind: 'slot-frets',
      does: `Square across${hasBoard ? ', the board still square and wide' : ''}.`,
      tool: 'fret saw and mitre box',
      setting: setting || undefined,
      after: ['mark-lines', 'plane', ...(hasBoard ? [] : ['plane-sides'])],
      check: `Nut line to the last slot reads ${design.scale?.lines?.at(-1)?.mark ?? size(0)}.`,
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
      step: 'Set the dots in',
      does: 'Drill shallow, glue in, level.',
      tool: 'hand drill, stop',
      after: ['mark-lines', 'plane-sides', 'glue-up-board', ...(isFretted ? [] : ['sand'])],
      words: ['dots', 'inlay*', 'inlaid'],
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
      does: `The ${burnt.join(' and ')}, on bare wood.`,
      tool: 'hot pen',
      after: ['mark-lines', 'sand', 'plane-sides'],
    },
  ]
}

function frets({values, design, size, isFretted}: WorkFacts): StepDraft[] {
  if (!isFretted) return []
  const {wireMm, pieces = [], overhangMm = 0} = design.neck?.fretting ?? {}
  const zero = values.nut?.kind?.value === 'zero-fret' ? ', the zero fret too' : ''
  return [
    {
      id: 'fret',
      kind: 'fret',
      does: `From both ends to the middle${zero}; nip close.`,
      tool: 'hammer and nippers',
      setting:
        wireMm === undefined
          ? undefined
          : `${pieces.length} pieces, ${size(wireMm)} of wire, ${size(overhangMm)} over at each side`,
      after: ['slot-frets', 'glue-up-board', 'plane-sides', 'sand', 'stain*'],
      check: 'A straightedge rocks on no fret.',
    },
    {
      id: 'fret-ends',
      kind: 'fret-ends',
      does: 'Flush, then slanted, then round.',
      tool: 'file',
      after: ['fret'],
      check: 'A rag catches nowhere.',
    },
  ]
}
