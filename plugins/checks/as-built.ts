import {pathAt} from '../build-file/schema/path.ts'
import type {MeasuredDay} from '../build-file/schema/values.ts'
import * as words from '../words/findings/as-built.ts'
import {rule} from './rule.ts'

const farYears = 10
/** A found box is measured before the work begins, a strung instrument is not. */
const isOfStrung = ({lines, cents, tensions, paths}: MeasuredDay): boolean =>
  lines.length + cents.length + tensions.length > 0 ||
  paths.some(({path}) => /^(?:action|scale)\b/.test(path))
/** Nobody planes a box to its drawing: what it measures is what there is to plan with. */
const isOfBox = (path: string): boolean => /^box\.(?:length|width|depth|sides|back|top)\b/.test(path)
const yearOf = (iso: string): number => Number(iso.slice(0, 4))

export const asBuiltRules = {
  'measure-out-of-tolerance': rule({
    severity: 'warning',
    about: 'journal',
    what: 'A measure of the finished thing that is further off the drawing than is allowed.',
    why: 'What was built is not what was planned, and some of the plan’s numbers do not hold for it. A mark of the ruler is allowed for a length, half a degree for an angle, a tenth for a pull (common practice, no source), and for pitch what ears notice.',
    mend: 'Mend it where it can be mended, measure again, or allow more under tolerances.',
    passes: 'scale: 24 1/4\nmeasured: {scale.length: 24 9/32}',
    fails: 'scale: 24 1/4\nmeasured: {scale.length: 24 5/16}',
    find: (_, {asBuilt = []}) =>
      asBuilt
        .filter(({isOut}) => isOut)
        .map((one) =>
          isOfBox(one.path)
            ? {...one, at: one.path, cause: one.of, severity: 'remark' as const, isAsFound: true}
            : {...one, at: one.of},
        ),
    says: words.measureOutOfTolerance,
  }),
  'measured-line-unknown': rule({
    severity: 'warning',
    what: 'A measured line that is not there.',
    why: 'What was measured there can be compared with nothing.',
    mend: 'Name the line as it is numbered on this build.',
    passes: 'scale: {length: 24, lines: 12}\nmeasured:\n  cents: {12: 4}',
    fails: 'scale: {length: 24, lines: 12}\nmeasured:\n  cents: {13: 4}',
    find: (build, {scale}) => {
      if (!scale?.lines) return []
      const labels = scale.lines.map((line) => line.label)
      const named = (build.values.measured?.days ?? []).flatMap(({of, lines, cents}) => [
        ...lines.map((item) => ({...item, under: `${of}.lines`})),
        ...cents.map((item) => ({...item, under: `${of}.cents`})),
      ])
      return named
        .filter(({label}) => !labels.includes(label))
        .map(({label, value, under}) => ({
          at: pathAt(build, under, value.place) ?? under,
          cause: 'scale.lines',
          label,
          labels,
        }))
    },
    says: words.measuredLineUnknown,
  }),
  'measured-without-day': rule({
    severity: 'warning',
    about: 'journal',
    what: 'One of several records of measures that does not say its day.',
    why: 'The last day counts, and the earlier ones show how it moved: without a day it counts as the first.',
    mend: 'Write the day it was measured under on.',
    passes: 'scale: 24\nmeasured: [{on: 2026-03-15, scale.length: 24}, {on: 2026-06-01, scale.length: 24}]',
    fails: 'scale: 24\nmeasured: [{on: 2026-03-15, scale.length: 24}, {scale.length: 24}]',
    find: ({values: {measured}}) => {
      const {days = []} = measured ?? {}
      return days.length < 2 ? [] : days.filter(({on}) => !on).map(({of}) => ({at: of}))
    },
    says: words.measuredWithoutDay,
  }),
  'measured-twice': rule({
    severity: 'warning',
    about: 'journal',
    what: 'One thing that was measured twice on one day.',
    why: 'Only one of the two counts: the one further down in the file.',
    mend: 'Keep the better reading, or mend the day of one.',
    passes: 'scale: 24\nmeasured: [{on: 2026-03-15, scale.length: 24}, {on: 2026-06-01, scale.length: 24}]',
    fails: 'scale: 24\nmeasured: [{on: 2026-03-15, scale.length: 24}, {on: 2026-03-15, scale.length: 24}]',
    find: (_, {asBuilt = []}) =>
      asBuilt.flatMap(({of, on, path, earlier}) =>
        on !== undefined && earlier?.at(-1)?.on === on ? [{at: of, path, on}] : [],
      ),
    says: words.measuredTwice,
  }),
  'measured-day-off': rule({
    severity: 'warning',
    about: 'journal',
    what: 'Measures of a day before the build was started, or long after every other day of it.',
    why: 'Lines and strings are measured on what was made, and a day like that is most often a slip of the year; the last day counts, so a wrong one would count for ever. Long after is more than ten years (common practice, no source).',
    mend: 'Mend the day under on, or started.',
    passes: 'started: 2026-03-07\nscale: 24\nmeasured: {on: 2026-03-15, scale.length: 24}',
    fails: 'started: 2026-03-07\nscale: 24\nmeasured: {on: 2025-03-15, scale.length: 24}',
    find: ({values: {measured, started, finished, played = []}}) => {
      const days = measured?.days ?? []
      const others = [started, finished, ...played.map(({on}) => on)].flatMap((day) => (day ? [day.iso] : []))
      return days.flatMap(
        (day): {at: string; cause?: string; on: string; before?: string; after?: string}[] => {
          const on = day.on?.iso
          if (on === undefined) return []
          const at = `${day.of}.on`
          if (started && on < started.iso && isOfStrung(day))
            return [{at, cause: 'started', on, before: started.iso}]
          const own = days.flatMap((one) => (one === day || !one.on ? [] : [one.on.iso]))
          const after = [...others, ...own].sort().at(-1)
          return after !== undefined && yearOf(on) > yearOf(after) + farYears ? [{at, on, after}] : []
        },
      )
    },
    says: words.measuredDayOff,
  }),
}
