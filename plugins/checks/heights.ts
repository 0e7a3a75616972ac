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
  'nut-heights-disagree': rule({
    severity: 'fault',
    what: 'A nut that stands at another height than the strings are drawn at.',
    why: 'A rod or bolt stands out by its diameter less its groove, and a zero fret by its own crown: a height that says otherwise cannot be made.',
    mend: 'Leave the height or the groove out, or make them agree.',
    passes: 'nut: {kind: rod, diameter: 3/16, groove: 1/16}\naction: {nut: 1/8}',
    fails: 'nut: {kind: rod, diameter: 3/16, groove: 1/16}\naction: {nut: 1/16}',
    find: ({values}, {nut, scale}) => {
      const {kind, trouble} = nut ?? {}
      if (!kind || !trouble || trouble.is === 'sunk') return []
      const at = trouble.is === 'thin' ? 'nut.diameter' : kind === 'zero-fret' ? 'action.nut' : 'nut.groove'
      const isFretted = scale?.fretted === true
      const {crown} = values.frets ?? {}
      return [
        {
          at,
          cause: kind === 'zero-fret' ? 'nut.kind' : 'action.nut',
          kind,
          isFretted,
          trouble,
          diameter: values.nut?.diameter?.text,
          zero: isFretted ? '0' : crown?.text,
        },
      ]
    },
    says: words.nutHeightsDisagree,
  }),
  'nut-sunk': rule({
    severity: 'fault',
    what: 'A groove as deep as the rod that lies in it, or so deep that the rod does not come above the frets.',
    why: 'The strings would lie on the wood or on the frets.',
    mend: 'Make the groove shallower, or take a thicker rod.',
    passes: 'nut: {kind: rod, diameter: 3/16, groove: 1/16}',
    fails: 'nut: {kind: rod, diameter: 3/16, groove: 1/4}',
    find: ({values}, {nut, scale}) => {
      const {kind, trouble, diameterMm = 0} = nut ?? {}
      if (!kind || trouble?.is !== 'sunk') return []
      const {groove, diameter} = values.nut ?? {}
      return [
        {
          at: 'nut.groove',
          cause: 'nut.diameter',
          kind,
          isFretted: scale?.fretted === true,
          isWhole: groove !== undefined && groove.mm >= diameterMm,
          groove: groove?.text,
          diameter: diameter?.text,
          groovePerhapsMm: trouble.groovePerhapsMm,
        },
      ]
    },
    says: words.nutSunk,
  }),
  'strings-on-face': rule({
    severity: 'fault',
    what: 'Strings that would touch the playing face or the frets.',
    why: 'They could not sound.',
    mend: 'Raise the bridge or the octave height.',
    passes: 'neck: 1 5/8 x 13/16\nbridge: {on: top, height: 1}\naction: {nut: 1/8}',
    fails: 'neck: 1 5/8 x 13/16\nbridge: {on: top, height: 5/8}\naction: {nut: 1/8}',
    find: ({values}, {action, nut, scale}) => {
      if (!action || nut?.trouble || (action.leastMm >= 0 && action.octaveMm > 0)) return []
      const {leastMm, levelHeightMm} = action
      const isFretted = scale?.fretted === true
      return values.bridge?.height && levelHeightMm !== undefined
        ? [{at: 'bridge.height', leastMm, isFretted, levelHeightMm}]
        : [{at: 'action.octave', leastMm, isFretted, nut: values.action?.nut?.text}]
    },
    says: words.stringsOnFace,
  }),
}
