import {writeLength} from '../../build-file/quantities/write-length.ts'
import type {Ruler} from '../lengths.ts'
import {only, type Wording} from './wording.ts'

export function headThickerThanStick(
  {thickness, comesToMm}: {thickness: string | undefined; comesToMm: number},
  ruler: Ruler,
): Wording {
  const most = comesToMm >= ruler.rulerMm ? writeLength(comesToMm, ruler, 'down') : undefined
  return {
    message: `a head ${thickness} thick cannot be planed from a stick that comes to ${writeLength(comesToMm, ruler, 'down')} there; ${most ? `${most} is the most` : 'take a thicker stick'}`,
    expected: only(most),
  }
}

export function headTooThick(
  {thicknessMm, mostMm}: {thicknessMm: number; mostMm: number},
  ruler: Ruler,
): Wording {
  const most = writeLength(mostMm, ruler, 'down')
  return {
    message: `the head is ${writeLength(thicknessMm, ruler)} thick, too thick for the tuners’ posts to come through; ${most} is the most`,
    expected: [most],
  }
}

export function headTooThin(
  {thicknessMm, leastMm}: {thicknessMm: number; leastMm: number},
  ruler: Ruler,
): Wording {
  const least = writeLength(leastMm, ruler, 'up')
  return {
    message: `the head is ${writeLength(thicknessMm, ruler)} thick, too thin for the tuners to be screwed and bushed; they need ${least}`,
    expected: [least],
  }
}

export function scarfAngle({
  angleDeg,
  leastDeg,
  mostDeg,
}: {
  angleDeg: number
  leastDeg: number
  mostDeg: number
}): Wording {
  const isFlat = angleDeg < leastDeg
  const usual = `${isFlat ? leastDeg : mostDeg}`
  return {
    message: `a scarf at ${degrees(angleDeg)}° is ${isFlat ? 'flatter than usual: long to saw, and the strings hardly go down behind the nut' : 'steeper than usual: little to glue, and a head that breaks when the instrument falls'}; ${usual}° would do`,
    expected: [usual],
  }
}

export function stringAngleFlat({
  name,
  angleDeg,
  leastDeg,
}: {
  name: string
  angleDeg: number
  leastDeg: number
}): Wording {
  const found =
    angleDeg <= 0
      ? `${name} does not go down behind the nut at all`
      : `${name} goes down only ${degrees(angleDeg)}° behind the nut`
  return {
    message: `${found}, where it needs ${leastDeg}° to stay in its slot; a retainer would do: a bar across the strings, or a screw`,
    expected: ['bar'],
  }
}

/** `gentler` is the head at which no string goes down too steeply. */
export function stringAngleSteep(
  {
    name,
    angleDeg,
    mostDeg,
    isDrop,
    gentler = {},
  }: {
    name: string
    angleDeg: number
    mostDeg: number
    isDrop: boolean
    gentler?: {angleDeg?: number | undefined; dropMm?: number | undefined} | undefined
  },
  ruler: Ruler,
): Wording {
  const text =
    gentler.angleDeg !== undefined
      ? degrees(gentler.angleDeg)
      : gentler.dropMm !== undefined
        ? writeLength(gentler.dropMm, ruler)
        : undefined
  const mend = text
    ? `${isDrop ? `a drop of ${text}` : `a head at ${text}°`} would do`
    : 'move its post further back'
  return {
    message: `${name} goes down ${degrees(angleDeg)}° behind the nut, more than ${mostDeg}°, which makes it bind and hard to tune; ${mend}`,
    expected: only(text),
  }
}

/** Write an angle in degrees to a tenth, without idle zeros: `6.9`. */
const degrees = (deg: number): string => String(Number(deg.toFixed(1)))

export function faceBeforeNut(
  {
    of,
    fromMm,
    isBeforeNut,
    needsFromMm,
    kind,
  }: {of: string; fromMm: number; isBeforeNut: boolean; needsFromMm: number; kind: string | undefined},
  ruler: Ruler,
): Wording {
  const face = of === 'fingerboard' ? 'fingerboard' : 'face'
  const text = writeLength(needsFromMm, ruler, 'down')
  const found = isBeforeNut
    ? `the ${face} ends ${writeLength(fromMm, ruler)} in front of the nut line, so that the nut stands beside it`
    : `the ${face} ends at the nut, and ${kind === 'zero-fret' ? 'the zero fret’s slot' : 'the nut’s groove'} would break out of its end`
  return {message: `${found}; from ${text} would do`, expected: [text]}
}

export function faceOverSlope({byMm, ledgeMm}: {byMm: number; ledgeMm: number}, ruler: Ruler): Wording {
  const text = writeLength(0 - ledgeMm, ruler)
  return {
    message: `the face goes on ${writeLength(byMm, ruler)} past the ledge, hollow over the head’s slope; from ${text} would do`,
    expected: [text],
  }
}
