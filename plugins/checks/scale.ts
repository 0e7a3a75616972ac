import {pathAt} from '../build-file/schema/path.ts'
import * as words from '../words/findings/scale.ts'
import {rule} from './rule.ts'

/** A twelfth step that is within this of the octave is the octave; typed ratios are exact, typed cents nearly so. */
const nearCents = 0.01

export const scaleRules = {
  'pattern-not-rising': rule({
    severity: 'error',
    what: 'A list of lines that does not rise.',
    why: 'The lines follow one another from the nut, so each is higher than the last.',
    mend: 'Put the list in rising order, each line once.',
    passes: 'scale: {length: 24, pattern: [2, 4, 5, 7, 9, 11, 12]}',
    fails: 'scale: {length: 24, pattern: [2, 4, 5, 4, 9, 11, 12]}',
    find: ({values}) => {
      const pattern = values.scale?.pattern
      if (!Array.isArray(pattern)) return []
      const slip = pattern.findIndex(({value}, i) => i > 0 && value <= pattern[i - 1]!.value)
      if (slip < 0) return []
      return [
        {
          at: `scale.pattern.${slip + 1}`,
          cause: `scale.pattern.${slip}`,
          here: pattern[slip]!.text,
          before: pattern[slip - 1]!.text,
        },
      ]
    },
    says: words.patternNotRising,
  }),
  'lines-past-pattern': rule({
    severity: 'warning',
    what: 'More lines than the pattern lists.',
    why: 'A list repeats only where it stops at the octave.',
    mend: 'Let the list stop at 12, or ask for as many lines as it has.',
    passes: 'scale: {length: 24, lines: 9, pattern: [3, 5, 7, 10, 12]}',
    fails: 'scale: {length: 24, lines: 9, pattern: [3, 5, 7]}',
    find: ({values}, {scale}) => {
      const wanted = values.scale?.lines?.value
      const laid = scale?.lines?.length
      if (wanted === undefined || laid === undefined || laid >= wanted) return []
      return [{at: 'scale.lines', cause: 'scale.pattern', wanted, laid}]
    },
    says: words.linesPastPattern,
  }),
  'line-past-bridge': rule({
    severity: 'fault',
    what: 'A line that lies under the bridge or past it.',
    why: 'Nothing can be played there.',
    mend: 'Lay out fewer lines, or mend the measure.',
    passes: '---\ntitle: Needle box\nscale: {length: 8, lines: 48}\nbridge: {foot: 5/8}\n---\n',
    fails: '---\ntitle: Needle box\nscale: {length: 8, lines: 60}\nbridge: {foot: 5/8}\n---\n',
    find: (build, {scale}) => {
      const {lines = [], lengthMm, bridgeFrontMm} = scale ?? {}
      if (lengthMm === undefined || bridgeFrontMm === undefined) return []
      const free = lines.filter((line) => line.fromNutMm <= bridgeFrontMm).length
      const first = lines[free]
      const measured = (build.values.measured?.days ?? []).flatMap(({of, lines: on}) =>
        on.filter(({value}) => value.mm >= lengthMm).map((line) => ({...line, under: `${of}.lines`})),
      )
      return [
        ...(first ? [{at: 'scale.lines', label: first.label, free}] : []),
        ...measured.map(({label, value, under}) => ({
          at: pathAt(build, under, value.place) ?? under,
          cause: 'scale.length',
          severity: 'warning' as const,
          label,
          measured: value.text,
        })),
      ]
    },
    says: words.linePastBridge,
  }),
  'fret-off-board': rule({
    severity: 'fault',
    what: 'A fret past the end of the fingerboard.',
    why: 'It would lie on the neck, lower than the others by the fingerboard’s thickness.',
    mend: 'Let the fingerboard reach further, or lay out fewer frets.',
    passes: 'scale: {length: 24, lines: 12, fretted: true}\nfingerboard: {thickness: 1/4, to: 12 1/2}',
    fails: 'scale: {length: 24, lines: 12, fretted: true}\nfingerboard: {thickness: 1/4, to: 11 1/2}',
    find: (_, {neck}) => {
      const {offBoard} = neck?.fretting ?? {}
      if (!offBoard) return []
      const [at, cause] = ['scale.lines', 'fingerboard.to']
      return [offBoard.holds === undefined ? {...offBoard, at: cause, cause: at} : {...offBoard, at, cause}]
    },
    says: words.fretOffBoard,
  }),
  'dot-without-line': rule({
    severity: 'fault',
    what: 'A dot on a line that is not there.',
    why: 'The dot could not be placed, so it would be left out or drilled by guess.',
    mend: 'Name a line that is there, or lay out more lines.',
    passes: 'scale: {length: 24, lines: 12, dots: [3, 5, 12]}',
    fails: 'scale: {length: 24, lines: 12, dots: [3, 5, 15]}',
    find: ({values}, {scale}) => {
      if (!scale?.lines) return []
      const labels = scale.lines.map(({label}) => label)
      const fret = (label: string) => Number.parseInt(label, 10)
      return (values.scale?.dots ?? []).flatMap(({label}, i) => {
        if (labels.includes(label)) return []
        const near = labels.filter((one) => fret(one) <= fret(label)).at(-1)
        return [{at: `scale.dots.${i + 1}`, label, labels, near}]
      })
    },
    says: words.dotWithoutLine,
  }),
  'temperament-not-rising': rule({
    severity: 'error',
    what: 'A temperament whose steps do not rise.',
    why: 'Each semitone is higher than the one before it.',
    mend: 'Put the twelve steps in rising order.',
    passes:
      'scale: {length: 24, temperament: [100, 200, 300, 400, 500, 600, 700, 800, 900, 1000, 1100, 1200]}',
    fails:
      'scale: {length: 24, temperament: [100, 200, 300, 300, 500, 600, 700, 800, 900, 1000, 1100, 1200]}',
    find: ({values}) => {
      const steps = values.scale?.temperament
      if (!Array.isArray(steps)) return []
      const slip = steps.findIndex(({cents}, i) => cents <= (steps[i - 1]?.cents ?? 0))
      if (slip < 0) return []
      return [
        {
          at: `scale.temperament.${slip + 1}`,
          cause: slip > 0 ? `scale.temperament.${slip}` : undefined,
          step: steps[slip]!.text,
          before: steps[slip - 1]?.text,
        },
      ]
    },
    says: words.temperamentNotRising,
  }),
  'temperament-octave': rule({
    severity: 'error',
    what: 'A temperament whose twelfth step is not the octave.',
    why: 'The twelve steps repeat by the octave.',
    mend: 'End the list with 1200 or 2/1.',
    passes:
      'scale: {length: 24, temperament: [100, 200, 300, 400, 500, 600, 700, 800, 900, 1000, 1100, 1200]}',
    fails:
      'scale: {length: 24, temperament: [100, 200, 300, 400, 500, 600, 700, 800, 900, 1000, 1100, 1201]}',
    find: ({values}) => {
      const steps = values.scale?.temperament
      const last = Array.isArray(steps) ? steps[11] : undefined
      if (!last || Math.abs(last.cents - 1200) <= nearCents) return []
      return [{at: 'scale.temperament.12', last: last.text}]
    },
    says: words.temperamentOctave,
  }),
}
