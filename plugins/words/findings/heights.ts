import {writeLength} from '../../build-file/quantities/write-length.ts'
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
