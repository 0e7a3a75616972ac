import * as words from '../words/findings/heights.ts'
import {rule} from './rule.ts'

export const heightRules = {
  'heights-disagree': rule({
    severity: 'fault',
    what: 'Heights at nut, octave and bridge that do not lie on one straight line.',
    why: 'A string is straight: only two of the three can be chosen, and the third would be made wrong.',
    mend: 'Leave one of them out, or make it agree.',
    passes: 'bridge: {height: 5/16}\naction: {nut: 1/8, octave: 7/32}',
    fails: 'bridge: {height: 3/8}\naction: {nut: 1/8, octave: 7/32}',
    find: ({values}, {action, rulerMm}) => {
      const height = values.bridge?.height
      const calledMm = action?.calledHeightMm
      if (!height || calledMm === undefined || Math.abs(calledMm - height.mm) <= rulerMm + 1e-6) return []
      return [
        {
          at: 'bridge.height',
          cause: 'action.octave',
          bridge: height.text,
          nut: values.action?.nut?.text,
          octave: values.action?.octave?.text,
          calledMm,
        },
      ]
    },
    says: words.heightsDisagree,
  }),
  'strings-on-face': rule({
    severity: 'fault',
    what: 'Strings that would touch the playing face or the frets.',
    why: 'They could not sound.',
    mend: 'Raise the bridge or the octave height.',
    passes: 'neck: 1 5/8 x 13/16\nbridge: {on: top, height: 1}\naction: {nut: 1/8}',
    fails: 'neck: 1 5/8 x 13/16\nbridge: {on: top, height: 5/8}\naction: {nut: 1/8}',
    find: ({values}, {action, scale}) => {
      if (!action || (action.leastMm >= 0 && action.octaveMm > 0)) return []
      const {leastMm, levelHeightMm} = action
      const isFretted = scale?.fretted === true
      return values.bridge?.height && levelHeightMm !== undefined
        ? [{at: 'bridge.height', leastMm, isFretted, levelHeightMm}]
        : [{at: 'action.octave', leastMm, isFretted, nut: values.action?.nut?.text}]
    },
    says: words.stringsOnFace,
  }),
}
