import {writeLength} from '../../build-file/quantities/write-length.ts'
import type {Ruler} from '../lengths.ts'
import {only, type Wording, type WouldDo} from './wording.ts'

interface Near {
  where: string
  gapMm: number
  needsMm: number
  wouldDo?: WouldDo | undefined
}

export function stringNearEdge({where, gapMm, needsMm, wouldDo}: Near, ruler: Ruler): Wording {
  const text = wouldDo && writeLength(wouldDo.mm, ruler)
  const found = gapMm <= 0 ? 'off the neck' : `${writeLength(gapMm, ruler, 'down')} from the neck’s edge`
  return {
    message: `the outer strings lie ${found} at the ${where}; ${writeLength(needsMm, ruler, 'up')} keeps them from slipping off${text ? `: ${wouldDo.path} ${text} would do` : ''}`,
    expected: only(text),
  }
}

export function stringsTooClose({where, gapMm, needsMm, wouldDo}: Near, ruler: Ruler): Wording {
  const text = wouldDo && writeLength(wouldDo.mm, ruler)
  const mend = text ? `${wouldDo.path} ${text} would do` : 'a wider neck and a wider spacing would do'
  return {
    message: `neighbouring strings are ${writeLength(gapMm, ruler, 'down')} apart at the ${where}, where fingers need ${writeLength(needsMm, ruler, 'up')}; ${mend}`,
    expected: only(text),
  }
}
