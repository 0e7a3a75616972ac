import {ownAt} from '../../build-file/schema/path.ts'
import {centsOf} from '../../tables/units.ts'
import {noteName} from '../kit/notes.ts'
import type {Drawn, Measure} from './as-measured.ts'

/** What a difference between drawing and thing does, in numbers. */
export type Effect =
  /** What a line sounds off, where all were marked for the drawn scale. */
  | {does: 'shift lines'; label: string; cents: number}
  /** The part by which every string pulls more at its pitch. */
  | {does: 'change pulls'; fraction: number}
  /** How much higher the strings stand, at the nut or over the octave. */
  | {does: 'lift strings'; at: 'nut' | 'octave'; mm: number}
  /** How much higher the strings stand over the octave, half of what the bridge is off. */
  | {does: 'lift by bridge'; mm: number}
  | {does: 'change bow'; fraction: number; mm: number; plannedMm: number}
  /** How much further from the edge the outer strings lie. */
  | {does: 'move edge'; mm: number}
  | {does: 'steepen head'; deg: number}
  /** What a line sounds off where it lies, or by the tuner off what is planned there. */
  | {does: 'shift line'; by: 'place' | 'tuner'; label: string; cents: number}
  | {does: 'change pull'; name: string; fraction: number}
  | {does: 'move air'; note: string; plannedNote: string; because: AirOff}

/** Why the air may answer elsewhere than planned. */
export type AirOff = 'less air' | 'stiff walls' | 'thin walls' | 'another note'

/** A measure that has something to be compared with. */
type Compared = Measure & {planned: number; difference: number}

interface EffectContext {
  drawn: Drawn
  referenceHz: number
  /** From nut to bridge as it was built, less the setback. */
  lengthMm: number | undefined
}

type EffectsOf = (measure: Compared, context: EffectContext) => Effect[]

/** What a length or an angle that is off does, by its path of the front matter. */
const sizeEffects: Readonly<Record<string, EffectsOf>> = {
  'scale.length': ({measured, planned}, {drawn, lengthMm = measured}) => {
    const lines = drawn.scale?.lines ?? []
    const line = lines.find(({semitones}) => semitones === 12) ?? lines.at(-1)
    const fraction = (measured / planned) ** 2 - 1
    return [
      ...(line && line.fromNutMm < lengthMm
        ? [
            {
              does: 'shift lines' as const,
              label: line.label,
              cents: centsOf(lengthMm / (lengthMm - line.fromNutMm)) - line.cents,
            },
          ]
        : []),
      ...(Math.abs(fraction) >= 0.005 ? [{does: 'change pulls' as const, fraction}] : []),
    ]
  },
  'action.octave': ({difference}) => [{does: 'lift strings', at: 'octave', mm: difference}],
  'action.nut': ({difference}) => [{does: 'lift strings', at: 'nut', mm: difference}],
  'bridge.height': ({difference}) => [{does: 'lift by bridge', mm: difference / 2}],
  'neck.thickness': ({measured, planned}, {drawn: {bowMm}}) => {
    // Stiffness goes with the cube of the thickness.
    const fraction = (planned / measured) ** 3 - 1
    if (bowMm === undefined || bowMm <= 0) return []
    return [{does: 'change bow', fraction, mm: bowMm * (1 + fraction), plannedMm: bowMm}]
  },
  'neck.width': ({difference}) => [{does: 'move edge', mm: difference / 2}],
  'head.angle': ({difference}) => [{does: 'steepen head', deg: difference}],
}

const groups: readonly (readonly [RegExp, (name: string) => EffectsOf])[] = [
  [/^lines\.(.+)$/, lineOff],
  [
    /^cents\.(.+)$/,
    (label) =>
      ({difference}) => [{does: 'shift line', by: 'tuner', label, cents: difference}],
  ],
  [
    /^strings\.(.+)\.tension$/,
    (name) =>
      ({difference, planned}) => [{does: 'change pull', name, fraction: difference / planned}],
  ],
  [/^resonance$/, () => airOff],
  [/^scale$/, () => sizeEffects['scale.length']!],
  [/^neck\.width\.nut$/, () => sizeEffects['neck.width']!],
]

/** Say what a difference does; nothing where there is none, or nothing is known of it. */
export function effectsOf(measure: Compared, context: EffectContext): Effect[] {
  if (Math.abs(measure.difference) < 1e-9) return []
  const own = ownAt(sizeEffects, measure.path)
  if (own) return own(measure, context)
  for (const [pattern, effect] of groups) {
    const found = pattern.exec(measure.path)
    if (found) return effect(found[1] ?? '')(measure, context)
  }
  return []
}

function lineOff(label: string): EffectsOf {
  return ({measured}, {drawn, lengthMm}) => {
    const line = drawn.scale?.lines?.find((one) => one.label === label)
    if (!line || lengthMm === undefined || measured >= lengthMm) return []
    return [
      {
        does: 'shift line',
        by: 'place',
        label,
        cents: centsOf(lengthMm / (lengthMm - measured)) - line.cents,
      },
    ]
  }
}

const airOff: EffectsOf = ({measured, planned}, {drawn, referenceHz}) => {
  const note = (hz: number) => noteName(Math.round(69 + centsOf(hz / referenceHz) / 100))
  const because = whyOff(measured, planned, drawn.box?.resonanceHz ?? planned)
  return [{does: 'move air', note: note(measured), plannedNote: note(planned), because}]
}

/** Walls lower the air's note by some per cent at most; what lies far below is another note, most often the lid's. */
function whyOff(measuredHz: number, lowHz: number, stiffHz: number): AirOff {
  if (measuredHz > stiffHz) return 'less air'
  if (measuredHz > lowHz) return 'stiff walls'
  return measuredHz >= 0.95 * lowHz ? 'thin walls' : 'another note'
}
