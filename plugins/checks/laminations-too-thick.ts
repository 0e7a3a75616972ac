import {writeLength} from '../build-file/quantities/write-length.ts'
import type {Check} from './check.ts'

/** Laminations that come to more above the neck's thickness than there is to plane off. */
export const laminationsTooThick: Check = {
  rule: 'laminations-too-thick',
  find: (_, {neck, ...plan}) => {
    const {laminationsMm, wantedMm, overMm, mostOverMm, wouldDo} = neck?.layup ?? {}
    if (laminationsMm === undefined || overMm === undefined || overMm <= mostOverMm! + 1e-6) return []
    const text = wouldDo && writeLength(wouldDo.mm, plan, 'up')
    return [
      {
        at: wouldDo?.path ?? 'neck.thickness',
        message: `the laminations come to ${writeLength(laminationsMm, plan)}, ${writeLength(overMm, plan)} more than the ${writeLength(wantedMm!, plan)} that the stick is to be${text ? `; ${text} here would do` : ''}`,
        cause: 'neck.thickness',
        ...(text && {expected: [text]}),
      },
    ]
  },
}
