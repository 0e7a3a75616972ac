import type {Place} from './problem.ts'

/** What every value of a build keeps: its spelling, where it stands, and whether it was assumed. */
export interface Written {
  /** As written in the file, or as a maker would write an assumed value. */
  text: string
  place: Place
  /** The value was left out and is assumed; its place is that of the nearest key around it. */
  assumed?: true
  /** The value was left out and is proposed, to fit this one instrument. */
  proposed?: true
}

export interface Length extends Written {
  mm: number
}
export interface Angle extends Written {
  deg: number
}
/** `midi` counts semitones, 69 being the A of the reference pitch. */
export interface Pitch extends Written {
  name: string
  midi: number
}
/** A string's diameter. */
export interface Gauge extends Written {
  mm: number
  wound: boolean
}
export interface Day extends Written {
  iso: string
}
export interface Duration extends Written {
  minutes: number
}
export interface Money extends Written {
  amount: number
}
export interface Force extends Written {
  n: number
}
export interface MassPerLength extends Written {
  kgM: number
}
export interface Stiffness extends Written {
  mpa: number
}
export interface Density extends Written {
  kgM3: number
}
export interface Capacitance extends Written {
  nf: number
}
/** A step of a temperament: cents above the open string. */
export interface Step extends Written {
  cents: number
}
export interface Numeral extends Written {
  value: number
}
export interface Flag extends Written {
  value: boolean
}
export interface Words<T extends string = string> extends Written {
  value: T
}
/** A fret or marker line by the name players give it: `12`, `6 1/2`. */
export interface LineLabel extends Written {
  label: string
}

/** The kinds of value that stand alone, and what each is read as. */
export interface LeafTypes {
  angle: Angle
  capacitance: Capacitance
  date: Day
  density: Density
  duration: Duration
  flag: Flag
  force: Force
  gauge: Gauge
  label: LineLabel
  length: Length
  massPerLength: MassPerLength
  money: Money
  number: Numeral
  pitch: Pitch
  step: Step
  stiffness: Stiffness
  text: Words
  wood: Words
}

export type LeafName = keyof LeafTypes

/** A measured value: the path it belongs to, and the value in the kind of that path. */
interface MeasuredValue {
  path: string
  value: LeafTypes[LeafName]
}
/** What was measured on one day. */
export interface MeasuredDay {
  /** Its path in the build file: `measured`, or where that is a list `measured.2`. */
  of: string
  on?: Day
  /** From the nut line, by the line's label. */
  lines: {label: string; value: Length}[]
  /** Read off a tuner, by the line's label. */
  cents: {label: string; value: Numeral}[]
  resonance?: Numeral
  /** By the string's note, or its name where two share a note. */
  tensions: {name: string; value: Force}[]
  /** Everything else: a path of the front matter. */
  paths: MeasuredValue[]
}
/** What was measured, day after day. */
export interface MeasuredValues {
  /** The last day. */
  on?: Day | undefined
  /** The earliest first; those without a day before all others, as the file has them. */
  days: MeasuredDay[]
}
