import type {BuildValues} from '../build-file/schema/schema.ts'
import {highFirstTunings} from '../tables/intervals.ts'
import {thinnestWoundIn, thinnestWrapIn} from '../tables/strings.ts'
import {inch} from '../tables/units.ts'
import * as words from '../words/findings/gauges.ts'
import {rule} from './rule.ts'

type StringValues = NonNullable<BuildValues['strings']>[number]

const thinnestWoundMm = inch(thinnestWoundIn)
const thinnestWrapMm = inch(thinnestWrapIn)

export const gaugeRules = {
  'wound-too-thin': rule({
    severity: 'warning',
    what: 'A wound string thinner than any that is made.',
    why: 'No packet has it.',
    mend: 'Write the gauge without w, or a heavier one.',
    passes: 'strings: [D4 .013]',
    fails: 'strings: [D4 .013w]',
    find: ({values}) =>
      (values.strings ?? []).flatMap((string, i) => {
        const {gauge} = string
        if (!gauge?.wound || gauge.mm >= thinnestWoundMm - 1e-9) return []
        const plain = gauge.text.replace(/ ?w$/i, '')
        return [{at: `strings.${i + 1}.gauge`, gauge: gauge.text, plain, given: woundParts(string)}]
      }),
    says: words.woundTooThin,
  }),
  'core-not-inside': rule({
    severity: 'error',
    what: 'A core that does not fit inside its string.',
    why: 'A wound string is its core and two turns of its wrap across.',
    mend: 'Leave the core out, or write the packet’s.',
    passes: 'strings: [{note: A3, gauge: .020w, core: .012}]',
    fails: 'strings: [{note: A3, gauge: .020w, core: .018}]',
    find: ({values}) =>
      (values.strings ?? []).flatMap(({gauge, core}, i) =>
        gauge?.wound && core && !core.assumed && core.mm + 2 * thinnestWrapMm > gauge.mm + 1e-9
          ? [
              {
                at: `strings.${i + 1}.core`,
                cause: `strings.${i + 1}.gauge`,
                core: core.text,
                gauge: gauge.text,
                isWhole: core.mm >= gauge.mm,
              },
            ]
          : [],
      ),
    says: words.coreNotInside,
  }),
  'core-on-plain': rule({
    severity: 'error',
    what: 'A core or a wrap on a plain string.',
    why: 'A plain string is one wire.',
    mend: 'Write w after the gauge of a wound string, or take core and wrap out.',
    passes: 'strings: [{note: D3, gauge: .030w, core: .015}]',
    fails: 'strings: [{note: D3, gauge: .030, material: steel, core: .015}]',
    find: ({values}) =>
      (values.strings ?? []).flatMap((string, i) => {
        const {gauge, core} = string
        const given = woundParts(string)
        if (!gauge || gauge.wound || given.length === 0) return []
        const cause = `strings.${i + 1}.${given[0]}`
        const leastMm = Math.max(thinnestWoundMm, (core?.mm ?? 0) + 2 * thinnestWrapMm)
        const wound = gauge.mm >= leastMm - 1e-9 ? asWound(gauge.text) : undefined
        return [{at: `strings.${i + 1}.gauge`, cause, gauge: gauge.text, wound, given}]
      }),
    says: words.coreOnPlain,
  }),
  'string-material-open': rule({
    severity: 'remark',
    what: 'A thick plain string whose material is not said.',
    why: 'Steel is taken for granted only up to .022; what pull it has depends on what it is.',
    mend: 'Write w if it is wound, or add its material.',
    passes: 'strings: [D3 .028w]',
    fails: 'strings: [D3 .028]',
    find: ({values}, {strings = []}) =>
      (values.strings ?? []).flatMap(({gauge, material}, i) => {
        const isKnown =
          material !== undefined || strings[i]?.massPerLengthKgM !== undefined || strings.length === 0
        if (!gauge || gauge.wound || isKnown) return []
        return [{at: `strings.${i + 1}.gauge`, gauge: gauge.text, wound: asWound(gauge.text)}]
      }),
    says: words.stringMaterialOpen,
  }),
  'packet-incomplete': rule({
    severity: 'remark',
    what: 'A packet’s pull without the scale and note that it was printed for.',
    why: 'A pull means nothing without the length and the pitch that it belongs to.',
    mend: 'Add what is missing, as the packet prints it.',
    passes: 'strings: [{note: D4, tension: {pull: 80 N, scale: 25 1/2, note: D4}}]',
    fails: 'strings: [{note: D4, tension: {pull: 80 N, note: D4}}]',
    find: ({values}) =>
      (values.strings ?? []).flatMap(({tension, mass}, i) => {
        if (!tension || mass) return []
        const lacks = (['pull', 'scale', 'note'] as const).filter((key) => !tension[key])
        return lacks.length > 0 ? [{at: `strings.${i + 1}.tension`, lacks}] : []
      }),
    says: words.packetIncomplete,
  }),
  'packet-unlike-gauge': rule({
    severity: 'remark',
    what: 'A packet’s mass or pull that is far from what gauge and core come to.',
    why: 'One of the two is most often a slip. The packet counts, so a slip there puts pull and setbacks wrong.',
    mend: 'Look at the packet again; else mend the gauge, the core or the material.',
    passes: 'strings: [{note: D4, gauge: .013, mass: 0.66 g/m}]',
    fails: 'strings: [{note: D4, gauge: .013, mass: 0.9 g/m}]',
    find: ({values}, {strings = []}) =>
      strings.flatMap(({name, gauge = '', coreAssumed, massFrom, packetOff}, i) => {
        if (!packetOff) return []
        const key = massFrom === 'mass' ? 'mass' : 'tension.pull'
        const pull = values.strings?.[i]?.tension?.pull
        const pullN = key === 'mass' || !pull ? undefined : pull.n / (1 + packetOff.part)
        const at = `strings.${i + 1}.${packetOff.modelFits ? key : 'gauge'}`
        return [{...packetOff, at, name, written: gauge, coreAssumed, pullN}]
      }),
    says: words.packetUnlikeGauge,
  }),
  'pitches-out-of-order': rule({
    severity: 'remark',
    what: 'A string that is lower than the one before it, in a tuning that does not commonly begin high.',
    why: 'Strings are listed from the player’s bass side, and tuners and anchors follow that order.',
    mend: 'List the strings from the bass side; leave it where the tuning is meant so.',
    passes: 'strings: [G3 .020, A3 .018, D4 .013]',
    fails: 'strings: [D4 .013, A3 .018, G3 .020]',
    find: ({values: {strings = []}}) => {
      // Told once, of the first that falls.
      const at = strings.findIndex(({note}, i) => {
        const before = strings[i - 1]?.note
        return note !== undefined && before !== undefined && note.midi < before.midi
      })
      const [note, before] = [strings[at]?.note, strings[at - 1]?.note]
      if (!note || !before || beginsHigh(strings.map((string) => string.note?.midi))) return []
      return [
        {
          at: `strings.${at + 1}.note`,
          cause: `strings.${at}.note`,
          note: note.text,
          before: before.text,
        },
      ]
    },
    says: words.pitchesOutOfOrder,
  }),
}

/** Whether notes are a tuning that commonly has a high first string. */
function beginsHigh(midis: readonly (number | undefined)[]): boolean {
  return highFirstTunings.some(
    (steps) => steps.length === midis.length && steps.every((step, i) => midis[i]! - midis[1]! === step),
  )
}

/** What the file says of a string that only a wound one has. */
const woundParts = (string: StringValues) =>
  (['core', 'wrap'] as const).filter((part) => string[part] && !string[part].assumed)

/** Write a plain gauge as that of a wound string: `.030w`, `0.76 mm w`. */
const asWound = (gauge: string): string => `${gauge}${/[a-z"″]$/i.test(gauge) ? ' ' : ''}w`
