import {writeLength} from '../build-file/quantities/write-length.ts'
import {rule} from './rule.ts'

export const heightRules = {
  'heights-disagree': rule({
    severity: 'fault',
    what: 'Heights at nut, octave and bridge that do not lie on one straight line.',
    why: 'A string is straight: only two of the three can be chosen, and the third would be made wrong.',
    mend: 'Leave one of them out, or make it agree.',
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
  }),
  'strings-on-face': rule({
    severity: 'fault',
    what: 'Strings that would touch the playing face or the frets.',
    why: 'They could not sound.',
    mend: 'Raise the bridge or the octave height.',
    find: ({values}, {action, scale, ...plan}) => {
      if (!action || (action.leastMm >= 0 && action.octaveMm > 0)) return []
      const face = scale?.fretted ? 'the frets' : 'the playing face'
      const found = `the strings would lie on ${face}: the heights put them ${writeLength(action.leastMm, plan)} above ${face === 'the frets' ? 'them' : 'it'} at the lowest`
      if (values.bridge?.height && action.levelHeightMm !== undefined) {
        const level = writeLength(action.levelHeightMm, plan, 'up')
        return [
          {
            at: 'bridge.height',
            message: `${found}; a bridge ${level} high lets them run level`,
            expected: [level],
          },
        ]
      }
      const nut = values.action?.nut?.text
      return [
        {
          at: 'action.octave',
          message: `${found}; an octave height no lower than at the nut lets them run level`,
          ...(nut && {expected: [nut]}),
        },
      ]
    },
  }),
}
