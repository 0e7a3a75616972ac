import {writeMeasured} from '../../build-file/quantities/write-measured.ts'
import type {Effect, EffectContext} from './effect.ts'
import {perCent} from './per-cent.ts'
import {sharpOrFlat} from './sharp-or-flat.ts'

const size = (mm: number, near: number, {plan: {units}}: EffectContext) =>
  writeMeasured(Math.abs(mm), 'mm', {units, near})

/** What a length or an angle that is off does, by its path of the front matter. */
export const sizeEffects: Readonly<Record<string, Effect>> = {
  'scale.length': ({measured, difference, planned}, context) => {
    const lines = context.plan.scale?.lines ?? []
    const line = lines.find(({semitones}) => semitones === 12) ?? lines.at(-1)
    const pull = (measured / planned) ** 2 - 1
    return [
      ...(line && line.fromNutMm < measured
        ? [
            `If the lines were marked for the drawn scale, each of them sounds ${difference > 0 ? 'flat' : 'sharp'}: line ${line.label} is ${sharpOrFlat(1200 * Math.log2(measured / (measured - line.fromNutMm)) - line.cents)}.`,
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
    const bowMm = context.plan.neck?.bow?.reliefMm
    // Stiffness goes with the cube of the thickness.
    const more = (planned / measured) ** 3 - 1
    if (bowMm === undefined || bowMm <= 0) return []
    const {units} = context.plan
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
