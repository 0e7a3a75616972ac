import type {StringPlan} from '../plan/strings/strings.ts'
import {breakLimits} from '../tables/strings.ts'
import * as words from '../words/findings/strings.ts'
import {rule} from './rule.ts'

export const stringRules = {
  'string-near-breaking': rule({
    severity: 'fault',
    what: 'A steel string tuned near its strength, or past it.',
    why: 'Near its strength a string wears fast and breaks while tuning, and the end that flies off can hurt an eye.',
    mend: 'Tune it lower, shorten the scale, or give it a lower string’s part.',
    passes: 'scale: 24 1/4\nstrings: [F#4 .010]',
    fails: 'scale: 24 1/4\nstrings: [B4 .008]',
    find: (_, {strings = []}) =>
      strings.flatMap((string, i) => {
        const {breakFraction, wound, alternatives} = string
        if (breakFraction === undefined || breakFraction < breakLimits.near) return []
        const at = `strings.${i + 1}.${wound && alternatives ? 'gauge' : 'note'}`
        return [{at, severity: severityOf(breakFraction), string}]
      }),
    says: words.stringNearBreaking,
  }),
  'string-slack': rule({
    severity: 'warning',
    what: 'A string that pulls too little.',
    why: 'A slack string buzzes, and a slide pushes it down to the lines.',
    mend: 'Take a heavier gauge, tune higher, or lengthen the scale.',
    passes: 'scale: 24 1/4\nplay: fingers\nstrings: [D4 .012]',
    fails: 'scale: 24 1/4\nplay: fingers\nstrings: [D4 .009]',
    find: (_, plan) => offPull(plan.strings, ({pull}) => pull === 'slack'),
    says: words.stringSlack,
  }),
  'string-stiff': rule({
    severity: 'warning',
    what: 'A string that pulls too much.',
    why: 'A stiff string is hard to press and bends the neck.',
    mend: 'Take a lighter gauge, tune lower, or shorten the scale.',
    passes: 'scale: 24 1/4\nplay: slide\nstrings: [D3 .030w]',
    fails: 'scale: 24 1/4\nplay: slide\nstrings: [D3 .042w]',
    find: (_, plan) => offPull(plan.strings, ({pull}) => pull === 'stiff'),
    says: words.stringStiff,
  }),
  'string-uneven': rule({
    severity: 'warning',
    what: 'A string that pulls far more or less than the others like it.',
    why: 'Under the hand it feels like another instrument’s, and it drowns the others or is drowned.',
    mend: 'Take a gauge that pulls as the others do.',
    passes: 'scale: 24 1/4\nstrings: [D3 .024w, A3 .017, D4 .0105, D4 .0130]',
    fails: 'scale: 24 1/4\nstrings: [D3 .024w, A3 .017, D4 .0105, D4 .0150]',
    find: (_, plan) =>
      // Where that is all that is wrong with it.
      offPull(
        plan.strings,
        ({pull, uneven, offMedian}) =>
          offMedian !== undefined && uneven === true && pull !== 'slack' && pull !== 'stiff',
      ),
    says: words.stringUneven,
  }),
  'string-too-long': rule({
    severity: 'warning',
    what: 'A string longer than packets come.',
    why: 'The string would not reach its post with enough winds to hold.',
    mend: 'Bring the anchors nearer, shorten the head or the scale, or buy strings made for long scales.',
    passes: 'scale: 30\ntuners: {at: [-2], off: [0], side: bass}\nanchors: {at: 33}\nstrings: [D3 .026w]',
    fails: 'scale: 30\ntuners: {at: [-2], off: [0], side: bass}\nanchors: {at: 35}\nstrings: [D3 .026w]',
    find: ({values}, {strings = [], bridge}) => {
      const [longest] = strings
        .flatMap(({name, lengthNeededMm, packetMm, anchorWithinMm}) =>
          lengthNeededMm === undefined || packetMm === undefined || lengthNeededMm <= packetMm
            ? []
            : [{name, lengthNeededMm, packetMm, anchorWithinMm}],
        )
        .sort((a, b) => b.lengthNeededMm - a.lengthNeededMm)
      if (!longest) return []
      const {anchorWithinMm = 0, ...facts} = longest
      const canMove = values.anchors?.at && bridge && anchorWithinMm > bridge.stationMm
      return canMove
        ? [{...facts, at: 'anchors.at', anchorsAtMm: anchorWithinMm}]
        : [{...facts, at: 'scale.length', anchorsAtMm: undefined}]
    },
    says: words.stringTooLong,
  }),
  'string-near-edge': rule({
    severity: 'warning',
    what: 'An outer string within 3/32 in of the neck’s edge.',
    why: 'It slips off the edge when it is pressed or bent.',
    mend: 'Narrow the spacing, or widen the neck.',
    passes: 'spacing: {nut: 1, bridge: 1}\nneck: {width: 1 5/8, thickness: 3/4}',
    fails: 'spacing: {nut: 1 1/2, bridge: 1}\nneck: {width: 1 5/8, thickness: 3/4}',
    find: (_, {neck}) =>
      (neck?.edges?.nearEdge ?? []).map((one) => ({
        ...one,
        at: one.wouldDo?.path ?? 'spacing.nut',
        needsMm: neck!.edges!.edgeLeastMm,
      })),
    says: words.stringNearEdge,
  }),
  'strings-too-close': rule({
    severity: 'warning',
    what: 'Strings closer than 1/4 in where fingers go between them.',
    why: 'A finger on one string touches the next.',
    mend: 'Widen the spacing at the nut.',
    passes: 'play: fingers\nspacing: {nut: 1}',
    fails: 'play: fingers\nspacing: {nut: 3/8}',
    find: (_, {neck}) =>
      (neck?.edges?.tooClose ?? []).map((one) => ({
        ...one,
        at: one.wouldDo?.path ?? 'spacing.nut',
        needsMm: neck!.edges!.neighbourLeastMm,
      })),
    says: words.stringsTooClose,
  }),
}

function severityOf(breakFraction: number): 'fault' | 'warning' | 'remark' {
  if (breakFraction >= breakLimits.broken) return 'fault'
  return breakFraction >= breakLimits.nearer ? 'warning' : 'remark'
}

/** List strings whose pull is off, and not near what breaks them, at the value that sets their mass. */
const offPull = (strings: readonly StringPlan[] = [], isOff: (string: StringPlan) => boolean) =>
  strings.flatMap((string, i) => {
    const {tensionN, breakFraction = 0, massFrom, mend} = string
    if (tensionN === undefined || breakFraction >= breakLimits.nearer || !isOff(string)) return []
    const key =
      massFrom === 'mass' && mend
        ? 'mass'
        : massFrom === 'tension' && mend?.packetN !== undefined
          ? 'tension.pull'
          : 'gauge'
    return [{at: `strings.${i + 1}.${key}`, string}]
  })
