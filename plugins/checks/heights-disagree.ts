import {writeLength} from '../build-file/quantities/write-length.ts'
import type {Check} from './check.ts'

/** Nut, octave and bridge heights that do not lie on one straight line, by more than the ruler shows. */
export const heightsDisagree: Check = {
  rule: 'heights-disagree',
  find: ({values}, {action, rulerMm, ...plan}) => {
    const height = values.bridge?.height
    const called = action?.calledHeightMm
    if (!height || called === undefined || Math.abs(called - height.mm) <= rulerMm + 1e-6) return []
    const text = writeLength(called, {...plan, rulerMm})
    const {nut, octave} = values.action ?? {}
    return [
      {
        at: 'bridge.height',
        message: `bridge height ${height.text}, but ${nut?.text} at the nut and ${octave?.text} at the octave call for ${text}; two of the three give the third`,
        ...(called > 0 && {expected: [text]}),
        cause: 'action.octave',
      },
    ]
  },
}
