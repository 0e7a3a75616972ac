import {glueWait, type StepDraft, stationsOf, type WorkFacts, type WorkGroup} from './step.ts'

const finished = ['sand', 'stain*', 'finish-*', 'burn-marks', 'mark-lines', 'drill-neck-dots', 'fret-ends']

/** Cut rods, put neck, box and hardware together, wire it, close it, string it and set it up. */
export const joiningSteps: WorkGroup = (facts) => [
  ...rods(facts),
  ...hardware(facts),
  ...fasten(facts),
  ...wire(facts),
  ...close(facts),
  ...strung(facts),
]

function rods({values: {nut, bridge}, size, asWritten, design}: WorkFacts): StepDraft[] {
  const rod = (id: string, what: string, setting: string | undefined): StepDraft => ({
    id,
    kind: 'cut-rod',
    step: `Cut the ${what}`,
    does: 'In the vice; file both ends round.',
    tool: 'vice and hacksaw',
    setting,
    after: [],
    words: [what, 'rod', 'rods', 'bolt'],
  })
  const kind = nut?.kind?.value
  const wide = design.neck?.sections?.find(({stationMm}) => stationMm === 0)?.widthMm
  const nutSize = [
    ...(nut?.diameter ? [`${asWritten(nut.diameter)} thick`] : []),
    ...(wide ? [`${size(wide)} long`] : []),
    ...(nut?.groove ? [`groove ${asWritten(nut.groove)} deep at the nut line`] : []),
  ].join(', ')
  return [
    ...(kind === 'rod' || kind === 'bolt' ? [rod('cut-rod-nut', `nut’s ${kind}`, nutSize || undefined)] : []),
    ...(bridge?.kind?.value === 'rod'
      ? [rod('cut-rod-bridge', 'bridge’s rod', bridge.length && `${asWritten(bridge.length)} long`)]
      : []),
  ]
}

function hardware({values}: WorkFacts): StepDraft[] {
  const {strings, tuners, anchors, extras = []} = values
  if (!strings?.length && !tuners && !anchors && extras.length === 0) return []
  const kind = anchors?.kind?.value
  const things = [
    'Tuners',
    ...(kind && kind !== 'plain' ? [kind === 'pins' || kind === 'tailpiece' ? kind : `${kind}s`] : []),
    ...extras.map(({value}) => value),
  ]
  return [
    {
      id: 'fasten-hardware',
      kind: 'fasten',
      step: 'Put the hardware on',
      does: `${things.length < 2 ? things.join('') : `${things.slice(0, -1).join(', ')} and ${things.at(-1)}`}.`,
      tool: 'screwdriver',
      after: finished,
      words: ['hardware', 'tuners', 'ferrules'],
    },
  ]
}

function fasten(facts: WorkFacts): StepDraft[] {
  const {values, design, asWritten} = facts
  if (!values.box || !values.neck) return []
  const screws = design.fasteners ?? []
  const [first] = values.screws ?? []
  const {shim, gapMm} = design.box?.neck ?? {}
  const isGlued = values.neck.joins?.value === 'end' && screws.length === 0
  const {waitH} = glueWait(facts)
  const length = values.scale?.length
  const shimmed = shim ? `, wedge ${facts.size(shim.thickMm)} at its thick end` : ''
  return [
    {
      id: 'fasten',
      kind: 'fasten',
      step: 'Join neck and box',
      does: isGlued
        ? 'Glue the neck on its block; clamp along the neck.'
        : screws.length > 0
          ? 'Wax the screws, drive them by hand.'
          : 'Bring neck and box together as the joint was fitted.',
      tool: isGlued ? 'glue and clamps' : 'screwdriver',
      setting:
        [
          ...(screws.length > 0 && first?.size
            ? [
                `${screws.length} of No. ${first.size.text}${first.length ? `, ${asWritten(first.length)}` : ''}`,
              ]
            : []),
          ...(shimmed ? [shimmed.slice(2)] : []),
          ...(gapMm === undefined ? [] : [`${facts.size(gapMm)} of daylight under the top`]),
        ].join('; ') || undefined,
      stations: screws.length > 0 ? [] : stationsOf(design.layout, ['screw']),
      waitH: isGlued ? waitH : undefined,
      after: finished,
      check: length
        ? `Nut line to bridge line still ${asWritten(length)}; a string runs down the middle.`
        : 'A string from nut to tail runs down the middle.',
      words: ['fasten*', 'screwed', 'joined', 'fitting the end', 'neck on', 'assembl*'],
    },
  ]
}

function wire({values: {pickup}}: WorkFacts): StepDraft[] {
  if (!pickup) return []
  const under = pickup.under?.value
  return [
    {
      id: 'wire',
      kind: 'wire',
      does: `Jack soldered on the bench; pickup${under ? ` under the ${under}` : ''}; lead tied down.`,
      tool: 'soldering iron',
      after: ['fasten'],
      check: 'A tap on the top comes through.',
    },
  ]
}

function close(facts: WorkFacts): StepDraft[] {
  const held = facts.values.box?.top?.held?.value
  if (!held) return []
  const isGlued = held === 'glued'
  return [
    {
      id: 'fasten-top',
      kind: 'fasten',
      step: 'Close the box',
      does: isGlued ? 'Glue the top down; look inside first.' : `The top is ${held}; look inside first.`,
      tool: isGlued ? 'glue and clamps' : 'screwdriver',
      waitH: isGlued ? glueWait(facts).waitH : undefined,
      after: ['fasten', 'wire'],
      check: 'Nothing rattles.',
      words: ['close the box', 'box closed', 'closing'],
    },
  ]
}

function strung({values, design, asWritten}: WorkFacts): StepDraft[] {
  const count = values.strings?.length ?? 0
  if (count === 0) return []
  const notes = (design.strings ?? []).map(({name, gauge}) => (gauge ? `${name} ${gauge}` : name))
  const {nut, octave} = values.action ?? {}
  const heights = [
    ...(nut ? [`nut ${asWritten(nut)}`] : []),
    ...(octave ? [`octave ${asWritten(octave)}`] : []),
  ].join(', ')
  return [
    {
      id: 'string',
      kind: 'string',
      does: 'Bridge on its line; all up by turns, a little each.',
      tool: 'hands and cutters',
      setting: notes.length > 0 ? notes.join(', ') : undefined,
      after: ['fasten-hardware', 'fasten', 'wire', 'fasten-top', 'cut-rod-nut', 'cut-rod-bridge'],
      check: 'Each holds its note after a stretch.',
    },
    {
      id: 'set-up',
      kind: 'set-up',
      does: 'Heights first, then the bridge by the octave; write them down.',
      tool: 'rule, files and tuner',
      setting: heights || undefined,
      after: ['string'],
      check: 'Octave line and half the string agree.',
    },
  ]
}
