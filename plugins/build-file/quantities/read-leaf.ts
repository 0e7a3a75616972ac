import {units} from '../../tables/units.ts'
import type {Limits} from '../schema/kinds.ts'
import type {LeafName, LeafTypes, Written} from '../schema/values.ts'
import {readDate, readDuration} from './read-date.ts'
import {readGauge, readLengthWithin} from './read-length.ts'
import {
  type MeasureKind,
  readFlag,
  readLineLabel,
  readMeasure,
  readMoney,
  readNumber,
  readStep,
} from './read-number.ts'
import {readPitch} from './read-pitch.ts'
import {limited, named, type Reading, reading} from './reading.ts'

/** What a leaf is read as, before its spelling and place are put to it. */
type Bare<N extends LeafName> = Omit<LeafTypes[N], keyof Written>

interface LeafContext {
  /** What a bare number means. */
  units: 'in' | 'mm'
  limits: Limits
}

type Reader<N extends LeafName> = (text: string, context: LeafContext) => Reading<Bare<N>>

/**
 * Read one scalar of a build file as the kind it must be, within its limits. `raw` is the number or truth value
 * that YAML made of a plain scalar, else its text; for texts and woods hand over the text as it stands.
 */
export function readLeaf<N extends LeafName>(
  leaf: N,
  raw: string | number | boolean,
  context: LeafContext,
): Reading<Bare<N>> {
  return (readers[leaf] as Reader<N>)(String(raw), context)
}

const measure = <K extends string>(key: K, unit: string, kind: MeasureKind) =>
  limited(key, unit, (text) => readMeasure(text, kind))

const words = (text: string) => reading({value: text.trim()})

const readers: {[N in LeafName]: Reader<N>} = {
  angle: measure('deg', '°', {
    what: 'an angle',
    rule: 'unreadable-angle',
    rows: units.angle,
    bare: units.angle[0]!,
  }),
  capacitance: measure('nf', ' nF', {
    what: 'a capacitance',
    rule: 'unreadable-capacitance',
    rows: units.capacitance,
  }),
  date: readDate,
  density: measure('kgM3', ' kg/m3', {what: 'a density', rule: 'unreadable-density', rows: units.density}),
  duration: limited('minutes', ' min', readDuration),
  flag: (text) => named('value', readFlag(text)),
  force: measure('n', ' N', {what: 'a force', rule: 'unreadable-force', rows: units.force}),
  gauge: (text, {units, limits}) => readGauge(text, units, limits),
  label: (text) => named('label', readLineLabel(text)),
  length: (text, {units, limits}) => readLengthWithin(text, units, limits),
  massPerLength: measure('kgM', ' kg/m', {
    what: 'a mass per length',
    rule: 'unreadable-mass-per-length',
    rows: units.massPerLength,
  }),
  money: limited('amount', '', readMoney),
  number: limited('value', '', readNumber),
  pitch: readPitch,
  step: limited('cents', ' cents', readStep),
  stiffness: measure('mpa', ' MPa', {
    what: 'a stiffness',
    rule: 'unreadable-stiffness',
    rows: units.stiffness,
  }),
  text: words,
  wood: words,
}
