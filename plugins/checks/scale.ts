import {pathAt} from '../build-file/path.ts'
import {rule} from './rule.ts'

export const scaleRules = {
  'pattern-not-rising': rule({
    severity: 'error',
    what: 'A list of lines that does not rise.',
    why: 'The lines follow one another from the nut, so each is higher than the last.',
    mend: 'Put the list in rising order, each line once.',
    find: ({values}) => {
      const pattern = values.scale?.pattern
      if (!Array.isArray(pattern)) return []
      const slip = pattern.findIndex(({value}, i) => i > 0 && value <= pattern[i - 1]!.value)
      if (slip < 0) return []
      const [before, here] = [pattern[slip - 1]!.text, pattern[slip]!.text]
      return [
        {
          at: `scale.pattern.${slip + 1}`,
          message: `${here} comes after ${before}, and each line must be higher than the one before; put them in rising order, each once`,
          cause: `scale.pattern.${slip}`,
        },
      ]
    },
  }),
  'lines-past-pattern': rule({
    severity: 'warning',
    what: 'More lines than the pattern lists.',
    why: 'A list repeats only where it stops at the octave.',
    mend: 'Let the list stop at 12, or ask for as many lines as it has.',
    find: ({values}, {scale}) => {
      const wanted = values.scale?.lines?.value
      const laid = scale?.lines?.length
      if (wanted === undefined || laid === undefined || laid >= wanted) return []
      return [
        {
          at: 'scale.lines',
          message: `${wanted} lines, but the pattern lists ${laid} and repeats only if its last is the octave (12); ${laid} would do`,
          expected: [`${laid}`],
          cause: 'scale.pattern',
        },
      ]
    },
  }),
  'line-past-bridge': rule({
    severity: 'fault',
    what: 'A line that lies under the bridge or past it.',
    why: 'Nothing can be played there.',
    mend: 'Lay out fewer lines, or mend the measure.',
    find: (build, {scale}) => {
      const {lines = [], lengthMm, bridgeFrontMm} = scale ?? {}
      if (lengthMm === undefined || bridgeFrontMm === undefined) return []
      const free = lines.filter((line) => line.fromNutMm <= bridgeFrontMm)
      const first = lines[free.length]
      const drawn = first
        ? [
            {
              at: 'scale.lines',
              message: `line ${first.label} would lie under the bridge; ${free.length} lines are the most that end before it`,
              expected: [`${free.length}`],
            },
          ]
        : []
      const measured = (build.values.measured?.lines ?? [])
        .filter(({value}) => value.mm >= lengthMm)
        .map(({label, value}) => ({
          at: pathAt(build, 'measured.lines', value.place) ?? 'measured.lines',
          message: `line ${label} was measured at ${value.text}, past the bridge, which lies at the scale length; measure it from the nut line`,
          cause: 'scale.length',
          severity: 'warning' as const,
        }))
      return [...drawn, ...measured]
    },
  }),
  'dot-without-line': rule({
    severity: 'fault',
    what: 'A dot on a line that is not there.',
    why: 'The dot could not be placed, so it would be left out or drilled by guess.',
    mend: 'Name a line that is there, or lay out more lines.',
    find: ({values}, {scale}) => {
      const lines = scale?.lines
      if (!lines) return []
      const labels = new Set(lines.map((line) => line.label))
      const last = lines.at(-1)?.label
      return (values.scale?.dots ?? []).flatMap((dot, i) => {
        if (labels.has(dot.label)) return []
        const lower = lines.filter(
          (line) => Number.parseInt(line.label, 10) <= Number.parseInt(dot.label, 10),
        )
        const near = lower.at(-1)?.label
        const reach =
          last === undefined ? 'there are no lines' : `the lines run from ${lines[0]!.label} to ${last}`
        return {
          at: `scale.dots.${i + 1}`,
          message: `a dot on line ${dot.label}, which is not there: ${reach}${near ? `; ${near} is the nearest before it` : ''}`,
          ...(near && {expected: [near]}),
        }
      })
    },
  }),
  'temperament-not-rising': rule({
    severity: 'error',
    what: 'A temperament whose steps do not rise.',
    why: 'Each semitone is higher than the one before it.',
    mend: 'Put the twelve steps in rising order.',
    find: ({values}) => {
      const steps = values.scale?.temperament
      if (!Array.isArray(steps)) return []
      const slip = steps.findIndex(({cents}, i) => cents <= (steps[i - 1]?.cents ?? 0))
      if (slip < 0) return []
      const before = slip === 0 ? 'the open string' : steps[slip - 1]!.text
      return [
        {
          at: `scale.temperament.${slip + 1}`,
          message: `${steps[slip]!.text} is not above ${before}; the twelve steps rise from the open string to the octave`,
          ...(slip > 0 && {cause: `scale.temperament.${slip}`}),
        },
      ]
    },
  }),
  'temperament-octave': rule({
    severity: 'error',
    what: 'A temperament whose twelfth step is not the octave.',
    why: 'The twelve steps repeat by the octave.',
    mend: 'End the list with 1200 or 2/1.',
    find: ({values}) => {
      const steps = values.scale?.temperament
      const last = Array.isArray(steps) ? steps[11] : undefined
      if (!last || Math.abs(last.cents - 1200) <= nearCents) return []
      const octave = /[/:]/.test(last.text) ? '2/1' : '1200'
      return [
        {
          at: 'scale.temperament.12',
          message: `the twelfth step is ${last.text} and must be the octave, from which the steps repeat; ${octave} would do`,
          expected: [octave],
        },
      ]
    },
  }),
}

/** A twelfth step that is within this of the octave is the octave; typed ratios are exact, typed cents nearly so. */
const nearCents = 0.01
