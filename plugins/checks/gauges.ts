import {thinnestWoundIn, thinnestWrapIn} from '../tables/strings.ts'
import type {Check} from './rule.ts'

const thinnestWoundMm = thinnestWoundIn * 25.4

/** A wound string thinner than any that is made. */
export const woundTooThin: Check = {
  rule: 'wound-too-thin',
  find: ({values}) =>
    (values.strings ?? []).flatMap(({gauge}, i) => {
      if (!gauge?.wound || gauge.mm >= thinnestWoundMm - 1e-9) return []
      const plain = gauge.text.replace(/ ?w$/i, '')
      return {
        at: `strings.${i + 1}.gauge`,
        message: `no wound string is as thin as ${gauge.text}; ${plain} is a plain string`,
        expected: [plain],
      }
    }),
}

const thinnestWrapMm = thinnestWrapIn * 25.4

/** A core that leaves no room for a wrap inside the gauge of its wound string. */
export const coreNotInside: Check = {
  rule: 'core-not-inside',
  find: ({values}) =>
    (values.strings ?? []).flatMap(({gauge, core}, i) => {
      if (!gauge?.wound || !core || core.mm + 2 * thinnestWrapMm <= gauge.mm + 1e-9) return []
      const found = core.mm >= gauge.mm ? 'is no thinner than the whole string' : 'leaves no room for a wrap'
      return {
        at: `strings.${i + 1}.core`,
        message: `a core of ${core.text} ${found}, ${gauge.text}; leave it out, and the usual one is taken`,
        cause: `strings.${i + 1}.gauge`,
      }
    }),
}

/** A core or a wrap on a string whose gauge says that it is plain. */
export const coreOnPlain: Check = {
  rule: 'core-on-plain',
  find: ({values}) =>
    (values.strings ?? []).flatMap(({gauge, core, wrap}, i) => {
      if (!gauge || gauge.wound || (!core && !wrap)) return []
      const what = core && wrap ? 'a core and a wrap' : core ? 'a core' : 'a wrap'
      const wound = `${gauge.text}${/[a-z"″]$/i.test(gauge.text) ? ' ' : ''}w`
      return {
        at: `strings.${i + 1}.gauge`,
        message: `${gauge.text} is a plain string, and a plain string has no core and no wrap, yet ${what} is given; write ${wound} if it is wound`,
        expected: [wound],
        cause: `strings.${i + 1}.${core ? 'core' : 'wrap'}`,
      }
    }),
}

/** A packet's pull without the scale and note that it belongs to, which is not used then. */
export const packetIncomplete: Check = {
  rule: 'packet-incomplete',
  find: ({values}) =>
    (values.strings ?? []).flatMap(({tension, mass}, i) => {
      if (!tension || mass || (tension.pull && tension.scale && tension.note)) return []
      const missing = (['pull', 'scale', 'note'] as const).filter((key) => !tension[key]).join(' and ')
      return {
        at: `strings.${i + 1}.tension`,
        message: `the packet’s pull is not used: it lacks its ${missing}; write it as {pull: 60 N, scale: 25 1/2 in, note: D4}`,
      }
    }),
}

/** Pitches that fall from one string to the next, from the player's bass side; told once. */
export const pitchesOutOfOrder: Check = {
  rule: 'pitches-out-of-order',
  find: ({values}) => {
    const {strings = []} = values
    const at = strings.findIndex(({note}, i) => {
      const before = strings[i - 1]?.note
      return note !== undefined && before !== undefined && note.midi < before.midi
    })
    const note = strings[at]?.note
    const before = strings[at - 1]?.note
    if (!note || !before) return []
    return [
      {
        at: `strings.${at + 1}.note`,
        message: `${note.text} is lower than ${before.text} before it, and strings are listed from the player’s bass side; leave it where the tuning is meant so`,
        cause: `strings.${at}.note`,
      },
    ]
  },
}
