import type {StepDraft} from './step.ts'
import {drivenIn, glueWait, isGluedOn, partsOf, type WorkFacts, type WorkGroup} from './work-facts.ts'

const finished = ['sand', 'stain*', 'finish-*', 'burn-marks', 'mark-lines', 'drill-neck-dots', 'fret-ends']

/** Cut rods, put neck, box and hardware together, wire it, close it, string it and set it up. */
export const joiningSteps: WorkGroup = (facts) => [
  ...rods(facts),
  ...furtherParts(facts),
  ...hardware(facts),
  ...fasten(facts),
  ...wire(facts),
  ...close(facts),
  ...strung(facts),
]

function rods({values: {nut, bridge}, asWritten, design}: WorkFacts): StepDraft[] {
  const kind = nut?.kind?.value
  const wideMm = design.neck?.sections?.find(({stationMm}) => stationMm === 0)?.widthMm
  const {diameter} = nut ?? {}
  const nutSize = {
    thick: diameter && asWritten(diameter),
    long: wideMm ? {mm: wideMm} : undefined,
  }
  const isSized = Object.values(nutSize).some(Boolean)
  return [
    ...(kind === 'rod' || kind === 'bolt'
      ? [
          {
            id: 'cut-rod-nut',
            kind: 'cut-rod' as const,
            facts: {
              of: 'cut-rod' as const,
              setting: isSized ? nutSize : undefined,
              for: 'nut' as const,
              rod: kind,
            },
            tool: 'hacksaw' as const,
            after: [],
          },
        ]
      : []),
    ...(bridge?.kind?.value === 'rod'
      ? [
          {
            id: 'cut-rod-bridge',
            kind: 'cut-rod' as const,
            facts: {
              of: 'cut-rod' as const,
              setting: bridge.length && {long: asWritten(bridge.length)},
              for: 'bridge' as const,
              rod: 'rod' as const,
            },
            tool: 'hacksaw' as const,
            after: [],
          },
        ]
      : []),
  ]
}

/** Fit what the file lists beside what the design implies: it is in the cut list, so it goes somewhere. */
function furtherParts({values, design}: WorkFacts): StepDraft[] {
  const parts = partsOf(design, (path) => path.startsWith('parts.'))
  if (parts.length === 0) return []
  const names = (values.parts ?? []).flatMap(({name}) => (name ? [name.value] : []))
  return [
    {
      id: 'fit-parts',
      kind: 'fit-parts',
      facts: {of: 'fit-parts', names: [...new Set(names)]},
      tool: 'saw',
      parts,
      after: ['rip', 'trim', 'plane', 'plane-sides', 'fit-blocks', 'box-prepare', 'box-strip'],
    },
  ]
}

function hardware({values}: WorkFacts): StepDraft[] {
  const {strings, tuners, anchors, extras = []} = values
  if (!strings?.length && !tuners && !anchors && extras.length === 0) return []
  return [
    {
      id: 'fasten-hardware',
      kind: 'fasten',
      facts: {
        of: 'fasten-hardware',
        anchors: anchors?.kind?.value,
        extras: extras.map(({value}) => value),
      },
      tool: 'screwdriver',
      after: finished,
    },
  ]
}

function fasten(facts: WorkFacts): StepDraft[] {
  const {values, design, asWritten} = facts
  if (!values.box || !values.neck) return []
  const {shim, gapMm} = design.box?.neck ?? {}
  const isGlued = isGluedOn(values, design)
  const screws = drivenIn(facts, ({holdsTop}) => !holdsTop)
  const length = values.scale?.length
  return [
    {
      id: 'fasten',
      kind: 'fasten',
      facts: {
        of: 'fasten',
        setting: screws || shim || gapMm !== undefined ? {screws, shimMm: shim?.thickMm, gapMm} : undefined,
        by: isGlued ? 'glue' : 'screws',
        length: length && asWritten(length),
      },
      tool: isGlued ? 'clamps' : 'screwdriver',
      waitH: isGlued ? glueWait(facts).waitH : undefined,
      after: [...finished, 'notch-box', 'cut-down'],
    },
  ]
}

function wire({values: {pickup}}: WorkFacts): StepDraft[] {
  if (!pickup) return []
  return [
    {
      id: 'wire',
      kind: 'wire',
      facts: {of: 'wire', under: pickup.under?.value},
      tool: 'iron',
      after: ['fasten'],
    },
  ]
}

function close(facts: WorkFacts): StepDraft[] {
  const held = facts.values.box?.top?.held?.value
  // A neck that runs through went in while the box was open.
  if (!held && facts.design.box?.neck?.joins !== 'through') return []
  const isGlued = held === 'glued'
  const screws = held === 'screwed' ? drivenIn(facts, ({holdsTop}) => holdsTop === true) : undefined
  return [
    {
      id: 'fasten-top',
      kind: 'fasten',
      facts: {of: 'fasten-top', held, setting: screws && {screws}},
      tool: isGlued ? 'clamps' : 'screwdriver',
      waitH: isGlued ? glueWait(facts).waitH : undefined,
      after: ['fasten', 'wire'],
    },
  ]
}

/** Say where the bridge is set under frets, which is behind its line. */
function setBack({isFretted, design: {strings = [], bridge}}: WorkFacts) {
  const [first, last] = [strings[0], strings.at(-1)]
  if (!isFretted || !first || !last || !bridge?.setAt) return undefined
  const {firstMm, lastMm} = bridge.setAt
  return {
    first: {name: first.name, mm: firstMm},
    last: strings.length > 1 ? {name: last.name, mm: lastMm} : undefined,
  }
}

function strung(facts: WorkFacts): StepDraft[] {
  const {values, design, asWritten, isFretted} = facts
  if (!values.strings?.length) return []
  const strings = (design.strings ?? []).map(({name, gauge}) => (gauge ? `${name} ${gauge}` : name))
  const {nut: drawn, octave} = values.action ?? {}
  // A zero fret is as high as it is.
  const nut = values.nut?.kind?.value === 'zero-fret' ? undefined : drawn
  return [
    {
      id: 'string',
      kind: 'string',
      facts: {
        of: 'string',
        setting: strings.length > 0 ? {strings} : undefined,
        setBack: setBack(facts),
        bridgeMm: values.bridge?.kind?.value === 'rod' ? undefined : design.bridge?.heightMm,
        hasFlatNut: values.nut?.kind?.value === 'flat',
      },
      tool: 'hands',
      after: ['fasten-hardware', 'fasten', 'wire', 'fasten-top', 'cut-rod-nut', 'cut-rod-bridge'],
    },
    {
      id: 'set-up',
      kind: 'set-up',
      facts: {
        of: 'set-up',
        isFretted,
        setting:
          nut || octave ? {nut: nut && asWritten(nut), octave: octave && asWritten(octave)} : undefined,
      },
      tool: 'tuner',
      after: ['string'],
    },
  ]
}
