import {noteName} from '../strings/note-name.ts'
import type {Compared, Effect, EffectContext} from './effect.ts'
import {perCent} from './per-cent.ts'
import {sharpOrFlat} from './sharp-or-flat.ts'
import {sizeEffects} from './size-effects.ts'

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
  return ({measured}, {plan, lengthMm}) => {
    const line = plan.scale?.lines?.find((one) => one.label === label)
    if (!line || lengthMm === undefined || measured >= lengthMm) return []
    const cents = 1200 * Math.log2(lengthMm / (lengthMm - measured)) - line.cents
    return [`Where it lies, line ${label} sounds ${sharpOrFlat(cents)}.`]
  }
}

const airOff: Effect = ({measured, planned}, {plan, referenceHz}) => {
  const [found, drawn] = [measured, planned].map((hz) =>
    noteName(Math.round(69 + 12 * Math.log2(hz / referenceHz))),
  )
  if (found === drawn) return [`The box answers near ${found}, as planned.`]
  return [
    `The box answers near ${found} instead of ${drawn}: ${whyOff(measured, plan.box?.resonanceLowHz ?? planned, planned)}.`,
  ]
}

/** Thin walls lower the air's note by some per cent; what lies far below is another note, most often the lid's. */
function whyOff(measuredHz: number, lowHz: number, plannedHz: number): string {
  if (measuredHz > plannedHz) return 'it holds less air, or has larger openings, than planned'
  if (measuredHz >= 0.95 * lowHz) return 'thin walls that give lower it'
  return 'that is lower than thin walls explain, and may be the lid’s own note'
}
