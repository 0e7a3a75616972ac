import type {AsBuilt, ToleranceFrom} from '../plan/as-built/as-built.ts'
import type {AirOff, Effect} from '../plan/as-built/as-built-effects.ts'
import {noticeableCents, noticeableSource} from '../tables/hearing.ts'
import {writeMeasured} from './measured.ts'
import type {Units} from './quantities.ts'

/** Where a tolerance comes from. */
export const toleranceFromWords: Readonly<Record<ToleranceFrom, string>> = {
  file: 'the build file',
  practice: 'common practice, no source',
  hearing: noticeableSource,
}

/** Say what the difference between drawing and thing does, a sentence each. */
export function effectsInWords({effects, planned}: AsBuilt, {units}: Units): string[] {
  const size = (mm: number, near = planned ?? mm) => writeMeasured(Math.abs(mm), 'mm', {units, near})
  return effects.map((effect) => inWords(effect, size))
}

/** Write a length without its sign, as finely as one of about `near` mm is measured. */
type Size = (mm: number, near?: number) => string

function inWords(effect: Effect, size: Size): string {
  switch (effect.does) {
    case 'shift lines':
      return `If the lines were marked for the drawn scale, each of them sounds ${effect.cents > 0 ? 'sharp' : 'flat'}: line ${effect.label} is ${sharpOrFlat(effect.cents)}.`
    case 'change pulls':
      return `Each string pulls ${perCent(effect.fraction)} ${moreOrLess(effect.fraction)} at its pitch.`
    case 'lift strings':
      return effect.at === 'octave' ? overOctave(effect.mm, size) : atNut(effect.mm, size)
    case 'lift by bridge':
      return `Over the octave the strings stand ${size(effect.mm)} ${effect.mm > 0 ? 'higher' : 'lower'} than drawn, half of what the bridge is off.`
    case 'change bow':
      return `The strings bow it ${perCent(effect.fraction)} ${moreOrLess(effect.fraction)}: about ${size(effect.mm, effect.mm)} where ${size(effect.plannedMm, effect.plannedMm)} was planned.`
    case 'move edge':
      return `The outer strings lie ${size(effect.mm)} ${effect.mm > 0 ? 'further from' : 'nearer to'} the edge, if their spacing is as drawn.`
    case 'steepen head':
      return `The strings go down ${effect.deg > 0 ? 'more steeply' : 'less steeply'} behind the nut, by ${Math.abs(effect.deg).toFixed(1)}°.`
    case 'shift line':
      return effect.by === 'tuner'
        ? `On the tuner line ${effect.label} sounds ${offPlanned(effect.cents)}.`
        : `Where it lies, line ${effect.label} sounds ${sharpOrFlat(effect.cents)}.`
    case 'change pull':
      return `${effect.name} pulls ${perCent(effect.fraction)} ${moreOrLess(effect.fraction)} than planned.`
    case 'move air':
      return effect.note === effect.plannedNote
        ? `The box answers near ${effect.note}, as planned.`
        : `The box answers near ${effect.note} instead of ${effect.plannedNote}: ${airOff[effect.because]}.`
  }
}

function overOctave(mm: number, size: Size): string {
  const side =
    mm > 0
      ? 'higher than drawn: they go sharper when they are pressed, and buzz less'
      : 'lower than drawn: they press easily, and buzz sooner'
  return `Over the octave the strings stand ${size(mm)} ${side}.`
}

function atNut(mm: number, size: Size): string {
  const side =
    mm > 0
      ? 'higher than drawn: the first lines go sharp when they are pressed'
      : 'lower than drawn: open strings buzz sooner'
  return `At the nut the strings stand ${size(mm)} ${side}.`
}

const airOff: Readonly<Record<AirOff, string>> = {
  'less air': 'it holds less air, or has larger openings, than planned',
  'stiff walls': 'its walls give less than thin ones mostly do',
  'thin walls': 'its walls give a little more than thin ones mostly do',
  'another note': 'that is lower than thin walls explain, and may be the lid’s own note',
}

const moreOrLess = (part: number) => (part > 0 ? 'more' : 'less')

/** Say a part of a whole without its sign: -0.0603 is `6.0 %`. */
const perCent = (part: number): string => `${(Math.abs(part) * 100).toFixed(1)} %`

/** Say a difference of pitch (cents) in words: `2.2 cents flat, less than ears notice`. */
const sharpOrFlat = (cents: number) => `${size(cents)} ${cents > 0 ? 'sharp' : 'flat'}${unheard(cents)}`

/** Say the same of what was planned: `2.2 cents flatter than planned, less than ears notice`. */
const offPlanned = (cents: number) =>
  `${size(cents)} ${cents > 0 ? 'sharper' : 'flatter'} than planned${unheard(cents)}`

const size = (cents: number) => `${Math.abs(cents).toFixed(1)} cents`
const unheard = (cents: number) => (Math.abs(cents) < noticeableCents ? ', less than ears notice' : '')
