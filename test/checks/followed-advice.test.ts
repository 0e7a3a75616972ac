import {describe, expect, test} from 'vitest'
import {printedPlan} from '../../plugins/words/printed-plan.ts'
import {planOf} from '../support/plan-of.ts'
import fc from '../support/properties.ts'
import '../support/slow.ts'

// A maker who follows all that a report proposes, at once, gets no new problem. Strings stand a line each, so that a
// problem's line names its string.
const rest = [
  'neck: {width: 1 5/8, thickness: 7/8, wood: hard maple}',
  'box: {wood: basswood, length: 10 1/8, width: 7, depth: 2, top: 1/8}',
]

interface Build {
  play: string
  scale: number
  fretted: boolean
  units: 'in' | 'mm'
  strings: {note: string; [key: string]: string}[]
}

function textOf({play, scale, fretted, units, strings}: Build): string {
  const lines = strings.map((string) => {
    const keys = Object.entries(string).map(([key, value]) => `${key}: ${value}`)
    return `  - {${keys.join(', ')}}`
  })
  const own = units === 'in' ? rest : ['neck: {width: 41, thickness: 22, wood: hard maple}']
  return [
    'strings:',
    ...lines,
    'title: A',
    `units: ${units}`,
    `play: ${play}`,
    `scale: {length: ${scale}, fretted: ${fretted}}`,
    ...own,
  ].join('\n')
}

/** Which value of a string a proposal is for, by how it is written. */
const keyOf = (value: string) => (/^[A-G]/.test(value) ? 'note' : /g\/m$/.test(value) ? 'mass' : 'gauge')

const advises = /^(?:string-(?:slack|stiff|uneven|near-breaking)|packet-unlike-gauge)$/
const firstLine = 3

const known = new Map<string, ReturnType<typeof planOf>>()
/** Plan a build once for all that is asked of it, one after the other. */
function planned(build: Build): ReturnType<typeof planOf> {
  const text = textOf(build)
  const plan = known.get(text) ?? planOf(text)
  known.clear()
  known.set(text, plan)
  return plan
}

function follow(build: Build): Build {
  const strings = build.strings.map((string) => ({...string}))
  for (const {rule, line, expected} of planned(build).problems) {
    const [first] = expected ?? []
    const string = strings[line - firstLine]
    if (advises.test(rule) && first !== undefined && string) string[keyOf(first)] = first
  }
  return {...build, strings}
}

const problemsOf = (build: Build) =>
  planned(build).problems.map(({rule, line, severity}) => ({key: `${rule} ${line}`, severity, rule}))

const sets = [
  ['D3', 'A3', 'D4'],
  ['G2', 'D3', 'G3'],
  ['G3', 'B3', 'D4', 'G4'],
  ['A2', 'E3', 'A3', 'C#4', 'E4'],
  ['D4'],
]
const gaugesIn = ['.008', '.011', '.013', '.017', '.020', '.024w', '.030w', '.042w', '.056w']
const gaugesMm = ['0.2 mm', '0.33 mm', '0.43 mm', '0.51 mm', '0.61 mm w', '0.76 mm w', '1.07 mm w']
const softIn = ['.022', '.028', '.036', '.030w', '.040w']

const randomBuild: fc.Arbitrary<Build> = fc
  .record({
    play: fc.constantFrom('slide', 'fingers', 'both'),
    scale: fc.integer({min: 18, max: 28}),
    fretted: fc.boolean(),
    units: fc.constantFrom('in' as const, 'mm' as const),
    notes: fc.constantFrom(...sets),
    soft: fc.boolean(),
    gauges: fc.array(fc.nat(100), {minLength: 5, maxLength: 5}),
    // Packets that lie somewhat off the model.
    packets: fc.array(fc.constantFrom(undefined, undefined, undefined, 0.92, 1.1), {
      minLength: 5,
      maxLength: 5,
    }),
  })
  .map(({units, scale, notes, soft, gauges, packets, ...of}): Build => {
    const from = units === 'mm' ? gaugesMm : soft ? softIn : gaugesIn
    const strings = notes.map((note, i) => ({
      note,
      gauge: from[gauges[i]! % from.length]!,
      ...(units === 'in' && soft && {material: 'nylon'}),
    }))
    const bare: Build = {...of, units, scale: units === 'in' ? scale : Math.round(scale * 25.4), strings}
    const weighed = planOf(textOf(bare)).plan.strings ?? []
    return {
      ...bare,
      strings: strings.map((string, i) => {
        const grams = (weighed[i]?.massPerLengthKgM ?? 0) * 1000 * (packets[i] ?? 0)
        return grams > 0 ? {...string, mass: `${grams.toFixed(3)} g/m`} : string
      }),
    }
  })

describe('advice is never worse than the fault', () => {
  test('gauges, masses and notes followed all at once bring no new problem', () => {
    fc.assert(
      fc.property(randomBuild, (build) => {
        const before = new Set(problemsOf(build).map(({key}) => key))
        const after = problemsOf(follow(build)).filter(({severity}) => severity !== 'remark')
        expect(after.filter(({key, rule}) => !before.has(key) && advises.test(rule))).toEqual([])
      }),
      {numRuns: 150},
    )
  })

  test('other gauges that would do bring none, all at once', () => {
    fc.assert(
      fc.property(randomBuild, (build) => {
        if (problemsOf(build).some(({rule}) => advises.test(rule))) return
        const {strings = []} = printedPlan(planned(build).plan)
        const taken = build.strings.map(({mass: _, ...string}, i) => ({
          ...string,
          note: string.note!,
          gauge: strings[i]?.alternatives?.[0]?.gauge ?? string.gauge!,
        }))
        expect(problemsOf({...build, strings: taken}).filter(({rule}) => advises.test(rule))).toEqual([])
      }),
      {numRuns: 150},
    )
  })
})
