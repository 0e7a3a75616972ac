import {writeLength} from '../../build-file/quantities/write-length.ts'
import type {Nut, NutTrouble} from '../../plan/action/nut.ts'
import {inch} from '../../tables/units.ts'
import type {Ruler} from '../lengths.ts'
import {only, type Wording} from './wording.ts'

export function heightsDisagree(
  {
    bridge,
    nut,
    octave,
    calledMm,
  }: {bridge: string; nut: string | undefined; octave: string | undefined; calledMm: number},
  ruler: Ruler,
): Wording {
  const text = writeLength(calledMm, ruler)
  return {
    message: `bridge height ${bridge}, but ${nut} at the nut and ${octave} at the octave call for ${text}; two of the three give the third`,
    expected: only(calledMm > 0 ? text : undefined),
  }
}

/** Heights over frets are written finer than a ruler shows. */
const finer = ({units}: Ruler): Ruler => ({units, rulerMm: units === 'in' ? inch(0.001) : 0.01})

/** `zero`: the height that a zero fret gives, as it is written. */
export function nutHeightsDisagree(
  {
    kind,
    isFretted,
    trouble,
    diameter,
    zero,
  }: {
    kind: Nut['kind']
    isFretted: boolean
    trouble: NutTrouble
    diameter: string | undefined
    zero: string | undefined
  },
  own: Ruler,
): Wording {
  const above = isFretted ? 'above the frets' : 'above the playing face'
  const ruler = isFretted || kind === 'zero-fret' ? finer(own) : own
  const drawn = `${writeLength(trouble.drawnMm, ruler)} ${above}`
  if (trouble.is === 'thin') {
    const text = writeLength(trouble.diameterPerhapsMm, ruler, 'up')
    return {
      message: `a ${kind} of ${diameter} cannot hold the strings ${drawn}; ${text} would do`,
      expected: [text],
    }
  }
  const {standsMm, groovePerhapsMm} = trouble as NutTrouble & {is: 'another height'}
  if (kind === 'zero-fret')
    return {
      message: `a zero fret holds the strings at its own crown, ${isFretted ? `level with the other frets` : `${zero} ${above}`}, but they are drawn ${drawn}; ${zero} would do`,
      expected: only(zero),
    }
  const text = groovePerhapsMm === undefined ? undefined : writeLength(groovePerhapsMm, ruler)
  return {
    message: `by its diameter and groove the ${kind} stands ${writeLength(standsMm, ruler)} ${above}, but the strings are drawn ${drawn}; a groove ${text} deep would do`,
    expected: only(text),
  }
}

export function nutSunk(
  {
    kind,
    isFretted,
    isWhole,
    groove,
    diameter,
    groovePerhapsMm,
  }: {
    kind: Nut['kind']
    isFretted: boolean
    isWhole: boolean
    groove: string | undefined
    diameter: string | undefined
    groovePerhapsMm: number
  },
  own: Ruler,
): Wording {
  const text = writeLength(groovePerhapsMm, isFretted ? finer(own) : own)
  const found =
    isFretted && !isWhole
      ? `leaves a ${kind} of ${diameter} below the frets`
      : `takes in the whole ${kind} of ${diameter}`
  return {message: `a groove ${groove} deep ${found}; ${text} would do`, expected: [text]}
}

/** What would do is a bridge height, or else an octave height as at the nut. */
export function stringsOnFace(
  {
    leastMm,
    isFretted,
    levelHeightMm,
    nut,
  }: {leastMm: number; isFretted: boolean; levelHeightMm?: number | undefined; nut?: string | undefined},
  ruler: Ruler,
): Wording {
  const [face, it] = isFretted ? ['the frets', 'them'] : ['the playing face', 'it']
  const found = `the strings would lie on ${face}: the heights put them ${writeLength(leastMm, ruler)} above ${it} at the lowest`
  if (levelHeightMm === undefined)
    return {
      message: `${found}; an octave height no lower than at the nut lets them run level`,
      expected: only(nut),
    }
  const level = writeLength(levelHeightMm, ruler, 'up')
  return {message: `${found}; a bridge ${level} high lets them run level`, expected: [level]}
}
