import {writeLength} from '../build-file/quantities/write-length.ts'
import {writeForce} from '../build-file/quantities/write-measured.ts'
import type {Plan} from '../plan/plan.ts'
import type {StringPlan} from '../plan/strings.ts'
import {breakLimits} from '../tables/strings.ts'
import {type Finding, rule} from './rule.ts'

export const stringRules = {
  'string-near-breaking': rule({
    severity: 'fault',
    what: 'A steel string tuned near its strength, or past it.',
    why: 'Near its strength a string wears fast and breaks while tuning, and the end that flies off can hurt an eye.',
    mend: 'Tune it lower, shorten the scale, or give it a lower string’s part.',
    find: (_, {strings = []}) =>
      strings.flatMap((string, i) => {
        const {breakFraction, note} = string
        if (breakFraction === undefined || breakFraction < breakLimits.near) return []
        const severity = severityOf(breakFraction)
        const found =
          severity === 'fault'
            ? `breaks before it reaches ${note}`
            : `is tuned to ${Math.round(breakFraction * 100)} % of its strength${severity === 'warning' ? ' and will not last' : ''}`
        const {at, does, expected} = breakMend(string, i)
        return {
          at,
          severity,
          message: `${stringCalled(string)} ${found}; ${does}`,
          ...(expected && {expected}),
        }
      }),
  }),
  'string-slack': rule({
    severity: 'warning',
    what: 'A string that pulls too little.',
    why: 'A slack string buzzes, and a slide pushes it down to the lines.',
    mend: 'Take a heavier gauge, tune higher, or lengthen the scale.',
    find: (_, plan) =>
      (plan.strings ?? []).flatMap((string, i) => {
        const {tensionN, pull, breakFraction = 0} = string
        if (tensionN === undefined || pull !== 'slack' || breakFraction >= breakLimits.nearer) return []
        const {at, expected, does} = stringMend(string, i, plan)
        const message = `${stringCalled(string)} pulls ${writeForce(tensionN, plan.units)}, which ${plan.play === 'slide' ? 'a slide presses down to the lines' : 'is slack and buzzes'}; ${does}`
        return {at, message, ...(expected && {expected})}
      }),
  }),
  'string-stiff': rule({
    severity: 'warning',
    what: 'A string that pulls too much.',
    why: 'A stiff string is hard to press and bends the neck.',
    mend: 'Take a lighter gauge, tune lower, or shorten the scale.',
    find: (_, plan) =>
      (plan.strings ?? []).flatMap((string, i) => {
        const {tensionN, pull, breakFraction = 0} = string
        if (tensionN === undefined || pull !== 'stiff' || breakFraction >= breakLimits.nearer) return []
        const {at, expected, does} = stringMend(string, i, plan)
        const message = `${stringCalled(string)} pulls ${writeForce(tensionN, plan.units)}, which is stiff; ${does}`
        return {at, message, ...(expected && {expected})}
      }),
  }),
  'string-uneven': rule({
    severity: 'warning',
    what: 'A string that pulls far more or less than the others like it.',
    why: 'Under the hand it feels like another instrument’s, and it drowns the others or is drowned.',
    mend: 'Take a gauge that pulls as the others do.',
    find: (_, plan) =>
      (plan.strings ?? []).flatMap((string, i) => {
        const {tensionN, pull, uneven, offMedian, breakFraction = 0} = string
        const isNamed = pull === 'slack' || pull === 'stiff' || breakFraction >= breakLimits.nearer
        if (tensionN === undefined || offMedian === undefined || !uneven || isNamed) return []
        const {at, expected, does} = stringMend(string, i, plan)
        const off = `${Math.abs(Math.round(offMedian * 100))} % ${offMedian > 0 ? 'more' : 'less'}`
        const message = `${stringCalled(string)} pulls ${writeForce(tensionN, plan.units)}, ${off} than the middle of the strings like it; ${does}`
        return {at, message, ...(expected && {expected})}
      }),
  }),
  'string-material-open': rule({
    severity: 'remark',
    what: 'A thick plain string whose material is not said.',
    why: 'Steel is taken for granted only up to .022; what pull it has depends on what it is.',
    mend: 'Write w if it is wound, or add its material.',
    find: ({values}, {strings = []}) =>
      (values.strings ?? []).flatMap(({gauge, material}, i) => {
        const isKnown =
          material !== undefined || strings[i]?.massPerLengthKgM !== undefined || strings.length === 0
        if (!gauge || gauge.wound || isKnown) return []
        const wound = `${gauge.text}${/[a-z"″]$/i.test(gauge.text) ? ' ' : ''}w`
        return {
          at: `strings.${i + 1}.gauge`,
          message: `${gauge.text} is thick for a plain steel string, so its pull is left open; write ${wound} if it is wound, or add its material`,
          expected: [wound],
        }
      }),
  }),
  'string-too-long': rule({
    severity: 'warning',
    what: 'A string longer than packets come.',
    why: 'The string would not reach its post with enough winds to hold.',
    mend: 'Bring the anchors nearer, shorten the head or the scale, or buy strings made for long scales.',
    find: ({values}, {strings = [], bridge, ...plan}) => {
      const [longest] = strings
        .flatMap(({name, lengthNeededMm, packetMm, anchorWithinMm}) =>
          lengthNeededMm === undefined || packetMm === undefined || lengthNeededMm <= packetMm
            ? []
            : [{name, lengthNeededMm, packetMm, anchorWithinMm}],
        )
        .sort((a, b) => b.lengthNeededMm - a.lengthNeededMm)
      if (!longest) return []
      const {name, lengthNeededMm, packetMm, anchorWithinMm = 0} = longest
      const found = `${name} needs ${writeLength(lengthNeededMm, plan, 'up')} of string from anchor to post, winds included; a packet holds about ${writeLength(packetMm, plan)}`
      const canMove = values.anchors?.at && bridge && anchorWithinMm > bridge.stationMm
      if (!canMove)
        return [
          {
            at: 'scale.length',
            message: `${found}: shorten the scale or the head, or buy strings made for long scales`,
          },
        ]
      const place = writeLength(anchorWithinMm, plan, 'down')
      return [
        {
          at: 'anchors.at',
          message: `${found}: anchors at ${place} would do, or strings made for long scales`,
          expected: [place],
        },
      ]
    },
  }),
}

function severityOf(breakFraction: number): 'fault' | 'warning' | 'remark' {
  if (breakFraction >= breakLimits.broken) return 'fault'
  return breakFraction >= breakLimits.nearer ? 'warning' : 'remark'
}

/** A wound string has its weight from the wrap, so a lighter one spares the core; a plain one only a lower note. */
function breakMend({wound, alternatives, mend}: StringPlan, i: number) {
  if (wound && alternatives) {
    const gauges = alternatives.map(({gauge}) => gauge)
    return {at: `strings.${i + 1}.gauge`, does: `${gauges.join(', ')} would spare its core`, expected: gauges}
  }
  return {
    at: `strings.${i + 1}.note`,
    does: `${mend?.note ?? 'a lower note'} is the highest note that keeps clear on this scale length`,
    ...(mend?.note && {expected: [mend.note]}),
  }
}

/**
 * Word what would bring a string to an even pull: gauges that would do at its `gauge`, or, where the packet tells its
 * mass or pull, another packet.
 */
function stringMend(
  string: StringPlan,
  at: number,
  {units}: Plan,
): Pick<Finding, 'at' | 'expected'> & {does: string} {
  const path = `strings.${at + 1}`
  const gauges = string.alternatives ?? []
  const does =
    gauges.length > 0
      ? gauges.map(({gauge, tensionN}) => `${gauge} would pull ${writeForce(tensionN, units)}`).join(', ')
      : `no common gauge carries ${string.note} here; another note or scale length would`
  const {mend} = string
  if (string.massFrom === 'mass' && mend)
    return {
      at: `${path}.mass`,
      expected: [gramsText(mend.massKgM)],
      does: `${gramsText(mend.massKgM)} is right; ${does}`,
    }
  if (string.massFrom === 'tension' && mend?.packetN !== undefined) {
    const pull = `${mend.packetN.toFixed(0)} N`
    return {
      at: `${path}.tension.pull`,
      expected: [pull],
      does: `a packet that prints ${pull} is right; ${does}`,
    }
  }
  return {at: `${path}.gauge`, does, ...(gauges.length > 0 && {expected: gauges.map(({gauge}) => gauge)})}
}

const gramsText = (kgM: number) => `${(kgM * 1000).toFixed(2)} g/m`

/** Name a string and its gauge as the file writes them: `D4 .013`. */
function stringCalled({name, gauge}: Pick<StringPlan, 'name' | 'gauge'>): string {
  return gauge ? `${name} ${gauge}` : name
}
