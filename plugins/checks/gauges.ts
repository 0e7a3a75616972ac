import {thinnestWoundIn, thinnestWrapIn} from '../tables/strings.ts'
import {rule} from './rule.ts'

const thinnestWoundMm = thinnestWoundIn * 25.4

export const gaugeRules = {
  'wound-too-thin': rule({
    severity: 'warning',
    what: 'A wound string thinner than any that is made.',
    why: 'No packet has it.',
    mend: 'Write the gauge without w, or a heavier one.',
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
  }),
  'core-not-inside': rule({
    severity: 'error',
    what: 'A core that does not fit inside its string.',
    why: 'A wound string is its core and two turns of its wrap across.',
    mend: 'Leave the core out, or write the packet’s.',
    find: ({values}) =>
      (values.strings ?? []).flatMap(({gauge, core}, i) => {
        if (!gauge?.wound || !core || core.mm + 2 * thinnestWrapMm <= gauge.mm + 1e-9) return []
        const found =
          core.mm >= gauge.mm ? 'is no thinner than the whole string' : 'leaves no room for a wrap'
        return {
          at: `strings.${i + 1}.core`,
          message: `a core of ${core.text} ${found}, ${gauge.text}; leave it out, and the usual one is taken`,
          cause: `strings.${i + 1}.gauge`,
        }
      }),
  }),
  'core-on-plain': rule({
    severity: 'error',
    what: 'A core or a wrap on a plain string.',
    why: 'A plain string is one wire.',
    mend: 'Write w after the gauge of a wound string, or take core and wrap out.',
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
  }),
  'packet-incomplete': rule({
    severity: 'remark',
    what: 'A packet’s pull without the scale and note that it was printed for.',
    why: 'A pull means nothing without the length and the pitch that it belongs to.',
    mend: 'Add what is missing, as the packet prints it.',
    find: ({values}) =>
      (values.strings ?? []).flatMap(({tension, mass}, i) => {
        if (!tension || mass || (tension.pull && tension.scale && tension.note)) return []
        const missing = (['pull', 'scale', 'note'] as const).filter((key) => !tension[key]).join(' and ')
        return {
          at: `strings.${i + 1}.tension`,
          message: `the packet’s pull is not used: it lacks its ${missing}; write it as {pull: 60 N, scale: 25 1/2 in, note: D4}`,
        }
      }),
  }),
  'pitches-out-of-order': rule({
    severity: 'remark',
    what: 'A string that is lower than the one before it.',
    why: 'Strings are listed from the player’s bass side, and tuners and anchors follow that order.',
    mend: 'List the strings from the bass side; leave it where the tuning is meant so.',
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
  }),
}

const thinnestWrapMm = thinnestWrapIn * 25.4
