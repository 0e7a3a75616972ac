import {writeLength} from '../build-file/quantities/write-length.ts'
import type {Check} from './check.ts'

/** Laminations that do not come to the neck's thickness. */
export const laminationsTooThin: Check = {
  rule: 'laminations-too-thin',
  find: (_, {neck, ...plan}) => {
    const {laminationsMm, wantedMm, overMm, wouldDo} = neck?.layup ?? {}
    if (laminationsMm === undefined || overMm === undefined || overMm >= -1e-6) return []
    const text = wouldDo && writeLength(wouldDo.mm, plan, 'up')
    return [
      {
        at: wouldDo?.path ?? 'neck.thickness',
        message: `the laminations come to ${writeLength(laminationsMm, plan)}, ${writeLength(-overMm, plan, 'up')} less than the ${writeLength(wantedMm!, plan)} that the stick is to be${text ? `; ${text} here would do` : ''}`,
        cause: 'neck.thickness',
        ...(text && {expected: [text]}),
      },
    ]
  },
}
