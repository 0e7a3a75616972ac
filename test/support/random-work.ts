import {changed} from './changed.ts'
import fc from './properties.ts'
import {soundBuilds} from './sound-builds.ts'
import {soundNecks} from './sound-necks.ts'

export const workBases = [...Object.values(soundBuilds), ...Object.values(soundNecks)]
const finishes = ['oil', 'shellac', 'wax', 'stain', 'lacquer', 'varnish', 'milk paint', 'oil', 'tea']

/** Features that come and go without each other. */
const features: readonly Record<string, string>[] = [
  {'neck.cap': '{wood: poplar, thickness: 1/16}'},
  {'head.plate': '{wood: poplar, thickness: 1/16}'},
  {'head.joint': 'solid'},
  {'head.joint': 'straight'},
  {'neck.joins': 'through'},
  {'neck.joins': 'end'},
  {'neck.round-over': '1/4'},
  {'neck.glue': 'epoxy'},
  {fingerboard: '{wood: poplar, thickness: 1/4, from: 0, to: 12}'},
  {markings: '{lines: burnt, dots: inlaid}'},
  {'box.top': '{thickness: 1/8, held: glued, paper: strip}'},
  {pickup: '{kind: piezo, jack: {hole: 3/8, in: side}}'},
  {parts: '[{name: foot, wood: poplar, length: 2, width: 1, thickness: 1/4, count: 3}]'},
  {bridge: '{kind: rod}'},
  {nut: '{kind: bolt}'},
  {screws: ''},
  {strings: ''},
  {tuners: ''},
  {anchors: ''},
  {box: ''},
]
/** A sound build with some features more or less. */
export const randomWork = fc
  .record({
    base: fc.constantFrom(...workBases),
    chosen: fc.subarray([...features]),
    coats: fc.subarray(finishes),
    isFretted: fc.boolean(),
  })
  .map(({base, chosen, coats, isFretted}) =>
    changed(base, {
      scale: `{length: 24 1/4, fretted: ${isFretted}, dots: [5, 7, 12]}`,
      ...(coats.length > 0
        ? {finish: `[${coats.map((kind) => `{kind: ${kind}, coats: 2}`).join(', ')}]`}
        : {}),
      ...Object.assign({}, ...chosen),
    }),
  )
