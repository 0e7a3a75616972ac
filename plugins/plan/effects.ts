import {asMade} from '../build-file/schema/as-made.ts'
import type {Build} from '../build-file/schema/build.ts'
import {isWritten, stringNames, valueAt, withValueAt} from '../build-file/schema/path.ts'
import type {BuildValues} from '../build-file/schema/schema.ts'
import {changesFrom} from './changes.ts'
import {type Instrument, planInstrument} from './instrument.ts'
import type {Context} from './kit/context.ts'

/** What a player or a maker notices of a change; lengths in mm. What cannot be computed is absent. */
export interface Felt {
  /** Of all strings. */
  pullN?: number | undefined
  /** The strings over the octave, strung. */
  octaveMm?: number | undefined
  /** From the nut line. */
  bridgeMm?: number | undefined
  bridgeHeightMm?: number | undefined
  /** Between the last line and the box; negative: over it. */
  lastLineClearMm?: number | undefined
  /** The hollow of the strung neck at the octave. */
  bowMm?: number | undefined
  /** Of the air in the box. */
  airHz?: number | undefined
  airNote?: string | undefined
  /** The note that is most off with the bridge on its line. */
  worstCents?: number | undefined
}

/** What the changes of a build come to: on the original as it was made, with each of them alone, and with all. */
export interface Effects {
  was: Felt
  is: Felt
  /** `paths` are changes that stand or fall together, as `changesFrom` has them. */
  alone: {paths: string[]; is: Felt}[]
}

/** More changes than this are taken by the part of the instrument that they belong to. */
const mostAlone = 24

/**
 * Plan a build, the one it was copied from as it was made, and that one with each change alone. Both as read, with
 * nothing assumed, since a change may bring other usual values. Stock is left out: it changes nothing that is felt.
 */
export function effectsOf(
  original: Build,
  build: Build,
  {journal, mended = []}: Pick<Context, 'journal'> & {mended?: readonly string[]},
): Effects {
  const felt = (values: BuildValues, of: Build) =>
    feltOf(planInstrument({...of, values}, {journal, pieces: []}))
  const measured = asMade(original.values, mended)
  const made = measured.reduce((values, {path, value}) => withValueAt(values, path, value), original.values)
  const was = felt(made, original)
  const alone = [...unitsOf(original, build, mended)].map(([unit, paths]) => ({
    paths,
    is: felt(withValueAt(made, unit, valueAt(build.values, unit)), original),
  }))
  return {was, is: felt(build.values, build), alone}
}

/** Gather the changes by what can be changed alone: a value, a string, a whole list; or by part where they are many. */
function unitsOf(original: Build, build: Build, mended: readonly string[]): Map<string, string[]> {
  const paths = changesFrom(original, build, mended).map(({path}) => path)
  const gathered = (of: (path: string) => string) => {
    const units = new Map<string, string[]>()
    for (const path of paths) units.set(of(path), [...(units.get(of(path)) ?? []), path])
    return units
  }
  const single = gathered((path) => unitOf(path, original, build))
  return single.size <= mostAlone ? single : gathered((path) => path.split('.')[0]!)
}

function unitOf(path: string, {values: old}: Build, {values}: Build): string {
  const [key, name = ''] = path.split('.')
  if (key === 'strings') {
    const at = stringNames(values.strings).indexOf(name)
    return old.strings?.length === values.strings?.length ? `strings.${at + 1}` : key
  }
  const steps = path.split('.')
  const ends = steps.findIndex((_, at) => {
    const above = steps.slice(0, at).join('.')
    const there = [valueAt(old, above), valueAt(values, above)]
    return at > 0 && there.some((one) => Array.isArray(one) || (one && isWritten(one)))
  })
  return ends < 0 ? path : steps.slice(0, ends).join('.')
}

/** Gather what is felt of a plan. */
export function feltOf({tensionTotalN, action, bridge, scale, box, neck}: Instrument): Felt {
  const last = scale?.lines?.at(-1)
  return {
    pullN: tensionTotalN,
    octaveMm: action?.octaveMm,
    bridgeMm: bridge?.stationMm,
    bridgeHeightMm: action?.bridgeToBuildMm,
    lastLineClearMm: last && box?.atMm !== undefined ? box.atMm - last.fromNutMm : undefined,
    bowMm: neck?.bow?.octaveMm,
    airHz: box?.resonanceLowHz,
    airNote: box?.nearestNote,
    worstCents: bridge?.drawnWorstCents,
  }
}
