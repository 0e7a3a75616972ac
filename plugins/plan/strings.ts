import {noteFrequencyHz, stringNames} from './notes.ts'
import type {PlanPart} from './part.ts'
import {coreDoubt, stringFacts} from './string-facts.ts'
import {alternatives, balance, mendString} from './string-mends.ts'

export interface StringPlan {
  /** Its note; a second one D4-2. */
  name: string
  note: string
  frequencyHz: number
  gaugeMm?: number | undefined
  /** As written. */
  gauge?: string | undefined
  wound?: boolean | undefined
  /** What it is made of; of a wound string, its core. */
  material?: string | undefined
  wrap?: string | undefined
  ends?: string | undefined
  /** How many strings run together. */
  course: number
  massPerLengthKgM?: number | undefined
  /** mass, tension, plain or wound: where the mass per length comes from. */
  massFrom?: string | undefined
  coreMm?: number | undefined
  coreAssumed?: boolean | undefined
  /** Least and most with an assumed core a twentieth of the gauge thinner and thicker. */
  coreDoubt?:
    | {
        tensionN: number[]
        stressMpa: number[]
      }
    | undefined
  /** Young’s modulus. */
  stiffnessMpa?: number | undefined
  /** file, or the material whose usual stiffness is taken. */
  stiffnessFrom?: string | undefined
  /** Diameter of what resists bending: the string, or its core. */
  sectionMm?: number | undefined
  /** T = μ(2Lf)², of one string. */
  tensionN?: number | undefined
  /** In the core, where wound. */
  stressMpa?: number | undefined
  /** Least strength of music wire of that diameter. */
  strengthMpa?: number | undefined
  breakFraction?: number | undefined
  breakKnown?: boolean | undefined
  stretchMm?: number | undefined
  /** B in f_n = n·f_0·√(1 + B·n²). */
  inharmonicity?: number | undefined
  /** slack, easy, firm or stiff. */
  pull?: string | undefined
  /** Slack below the first, easy and firm up to the others, stiff above. */
  pullLimits?:
    | {
        slackN: number
        easyN: number
        firmN: number
      }
    | undefined
  /** Pull over the median of its material, less 1. */
  offMedian?: number | undefined
  /** Too far off the median of its material. */
  uneven?: boolean | undefined
  /** From its anchor over bridge and nut to the post, winds included. */
  lengthNeededMm?: number | undefined
  /** How long the string of a packet is. */
  packetMm?: number | undefined
  /** The furthest place of its anchor that a packet’s string reaches. */
  anchorWithinMm?: number | undefined
  /** Common gauges that would do, the one nearest to the pull to aim for first. */
  alternatives?:
    | {
        gauge: string
        tensionN: number
      }[]
    | undefined
  mend?:
    | {
        /** The pull to aim for. */
        tensionN: number
        /** What a string of that pull weighs, kg/m. */
        massKgM: number
        /** What a packet would print for it. */
        packetN?: number | undefined
        /** The highest note clear of breaking. */
        note?: string | undefined
      }
    | undefined
}

/**
 * Compute each string at its pitch on this scale (see string-facts.ts), the common gauges that would do, and the pull
 * of all together (N), every string of a course counted. In the file's order; absent until each string has a note.
 */
export const strings: PlanPart = ({values, units, referenceHz}) => {
  const listed = (values.strings ?? []).flatMap((string) =>
    string.note ? [{...string, note: string.note}] : [],
  )
  if (listed.length === 0 || listed.length !== values.strings?.length) return {}
  const play = values.play?.value
  const lengthMm = values.scale?.length?.mm
  const names = stringNames(listed.map(({note}) => note.name))
  const places = listed.map(({note}) => ({
    frequencyHz: noteFrequencyHz(note.midi, referenceHz),
    lengthMm,
    play,
  }))
  const facts = listed.map((string, i) => stringFacts(string, places[i]!))
  const balanced = balance(facts, play)
  const planned = listed.map((string, i): StringPlan => {
    const {targetN, ...off} = balanced[i]!
    const doubt = coreDoubt(string, places[i]!)
    const mend = mendString(string, places[i]!, facts[i]!, balanced[i]!)
    const others = lengthMm === undefined ? [] : alternatives(string, places[i]!, targetN, units)
    const course = string.course?.value ?? 1
    const plan: StringPlan = {name: names[i]!, note: string.note.name, course, ...facts[i]!, ...off}
    if (doubt) plan.coreDoubt = doubt
    if (mend) plan.mend = mend
    if (others.length > 0) plan.alternatives = others
    return plan
  })
  const pullsN = planned.flatMap(({tensionN, course}) => (tensionN === undefined ? [] : [tensionN * course]))
  return {
    strings: planned,
    ...(pullsN.length === planned.length && {tensionTotalN: pullsN.reduce((sum, one) => sum + one, 0)}),
  }
}
