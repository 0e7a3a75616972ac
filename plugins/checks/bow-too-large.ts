import {writeLength} from '../build-file/quantities/write-length.ts'
import type {Check} from './check.ts'

/** A neck that the strings bow by more than they stand above it. */
export const bowTooLarge: Check = {
  rule: 'bow-too-large',
  find: (_, {neck, ...plan}) => {
    const tooLow = neck?.bow?.tooLow
    if (!tooLow) return []
    const text = tooLow.wouldDo && writeLength(tooLow.wouldDo.mm, plan)
    return [
      {
        at: tooLow.wouldDo?.path ?? 'neck.thickness',
        message: `the strings bow the neck by ${writeLength(tooLow.bowMm, plan)} at line ${tooLow.label}, more than the ${writeLength(tooLow.actionMm, plan)} they stand above it there; ${text ? `${tooLow.wouldDo!.path} ${text} would do` : 'a stiffer neck or lighter strings would do'}`,
        ...(text && {expected: [text]}),
      },
    ]
  },
}
