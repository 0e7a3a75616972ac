import {writeMeasured} from '../build-file/quantities/write-measured.ts'
import {noticeableCents} from '../tables/hearing.ts'
import {centsOf} from '../tables/units.ts'
import type {Drawn, Measure} from './as-built.ts'
import {noteName} from './notes.ts'

/** A measure that has something to be compared with. */
type Compared = Measure & {planned: number; difference: number}

interface EffectContext {
  drawn: Drawn
  units: 'in' | 'mm'
  referenceHz: number
  /** From nut to bridge as it was built. */
  lengthMm: number | undefined
}

/** Say what a difference does, a sentence each. */
type Effect = (measure: Compared, context: EffectContext) => string[]

const size = (mm: number, near: number, {units}: EffectContext) =>
  writeMeasured(Math.abs(mm), 'mm', {units, near})

/** What a length or an angle that is off does, by its path of the front matter. */
const sizeEffects: Readonly<Record<string, Effect>> = {
  'scale.length': ({measured, difference, planned}, context) => {
    const lines = context.drawn.scale?.lines ?? []
    const line = lines.find(({semitones}) => semitones === 12) ?? lines.at(-1)
    const pull = (measured / planned) ** 2 - 1
    return [
      ...(line && line.fromNutMm < measured
        ? [
            `If the lines were marked for the drawn scale, each of them sounds ${difference > 0 ? 'flat' : 'sharp'}: line ${line.label} is ${sharpOrFlat(centsOf(measured / (measured - line.fromNutMm)) - line.cents)}.`,
          ]
        : []),
      ...(Math.abs(pull) >= 0.005
        ? [`Each string pulls ${perCent(pull)} ${pull > 0 ? 'more' : 'less'} at its pitch.`]
        : []),
    ]
  },
  'action.octave': ({difference, planned}, context) => [
    `Over the octave the strings stand ${size(difference, planned, context)} ${difference > 0 ? 'higher than drawn: they go sharper when they are pressed, and buzz less' : 'lower than drawn: they press easily, and buzz sooner'}.`,
  ],
  'action.nut': ({difference, planned}, context) => [
    `At the nut the strings stand ${size(difference, planned, context)} ${difference > 0 ? 'higher than drawn: the first lines go sharp when they are pressed' : 'lower than drawn: open strings buzz sooner'}.`,
  ],
  'bridge.height': ({difference, planned}, context) => [
    `Over the octave the strings stand ${size(difference / 2, planned, context)} ${difference > 0 ? 'higher' : 'lower'} than drawn, half of what the bridge is off.`,
  ],
  'neck.thickness': ({measured, planned}, context) => {
    const {units, drawn} = context
    const {bowMm} = drawn
    // Stiffness goes with the cube of the thickness.
    const more = (planned / measured) ** 3 - 1
    if (bowMm === undefined || bowMm <= 0) return []
    return [
      `The strings bow it ${perCent(more)} ${more > 0 ? 'more' : 'less'}: about ${writeMeasured(bowMm * (1 + more), 'mm', {units})} where ${writeMeasured(bowMm, 'mm', {units})} was planned.`,
    ]
  },
  'neck.width': ({difference, planned}, context) => [
    `The outer strings lie ${size(difference / 2, planned, context)} ${difference > 0 ? 'further from' : 'nearer to'} the edge, if their spacing is as drawn.`,
  ],
  'head.angle': ({difference}) => [
    `The strings go down ${difference > 0 ? 'more steeply' : 'less steeply'} behind the nut, by ${Math.abs(difference).toFixed(1)}°.`,
  ],
}

const groups: readonly (readonly [RegExp, (name: string) => Effect])[] = [
  [/^lines\.(.+)$/, lineOff],
  [
    /^cents\.(.+)$/,
    (label) =>
      ({difference}) => [`On the tuner line ${label} sounds ${sharpOrFlat(difference)}.`],
  ],
  [
    /^strings\.(.+)\.tension$/,
    (name) =>
      ({difference, planned}) => [
        `${name} pulls ${perCent(difference / planned)} ${difference > 0 ? 'more' : 'less'} than planned.`,
      ],
  ],
  [/^resonance$/, () => airOff],
  [/^scale$/, () => sizeEffects['scale.length']!],
  [/^neck\.width\.nut$/, () => sizeEffects['neck.width']!],
]

/** Say in a maker's words what a difference does; nothing where there is none, or nothing is known of it. */
export function effectsOf(measure: Compared, context: EffectContext): string[] {
  if (Math.abs(measure.difference) < 1e-9) return []
  const own = sizeEffects[measure.path]
  if (own) return own(measure, context)
  for (const [pattern, effect] of groups) {
    const found = pattern.exec(measure.path)
    if (found) return effect(found[1] ?? '')(measure, context)
  }
  return []
}

function lineOff(label: string): Effect {
  return ({measured}, {drawn, lengthMm}) => {
    const line = drawn.scale?.lines?.find((one) => one.label === label)
    if (!line || lengthMm === undefined || measured >= lengthMm) return []
    const cents = centsOf(lengthMm / (lengthMm - measured)) - line.cents
    return [`Where it lies, line ${label} sounds ${sharpOrFlat(cents)}.`]
  }
}

const airOff: Effect = ({measured, planned}, {drawn, referenceHz}) => {
  const [foundNote, drawnNote] = [measured, planned].map((hz) =>
    noteName(Math.round(69 + 12 * Math.log2(hz / referenceHz))),
  )
  if (foundNote === drawnNote) return [`The box answers near ${foundNote}, as planned.`]
  return [
    `The box answers near ${foundNote} instead of ${drawnNote}: ${whyOff(measured, drawn.box?.resonanceLowHz ?? planned, planned)}.`,
  ]
}

/** Thin walls lower the air's note by some per cent; what lies far below is another note, most often the lid's. */
function whyOff(measuredHz: number, lowHz: number, plannedHz: number): string {
  if (measuredHz > plannedHz) return 'it holds less air, or has larger openings, than planned'
  if (measuredHz >= 0.95 * lowHz) return 'thin walls that give lower it'
  return 'that is lower than thin walls explain, and may be the lid’s own note'
}

/** Say a part of a whole without its sign: -0.0603 is `6.0 %`. */
const perCent = (part: number): string => `${(Math.abs(part) * 100).toFixed(1)} %`

/** Say a difference of pitch (cents) in words: `2.2 cents flat, less than ears notice`. */
function sharpOrFlat(cents: number): string {
  const unheard = Math.abs(cents) < noticeableCents ? ', less than ears notice' : ''
  return `${Math.abs(cents).toFixed(1)} cents ${cents > 0 ? 'sharp' : 'flat'}${unheard}`
}
