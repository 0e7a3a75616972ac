import {writeLength} from '../../build-file/quantities/write-length.ts'
import type {Fretting} from '../../plan/neck/fretting.ts'
import type {Ruler} from '../lengths.ts'
import {only, type Wording} from './wording.ts'

export function patternNotRising({here, before}: {here: string; before: string}): Wording {
  return {
    message: `${here} comes after ${before}, and each line must be higher than the one before; put them in rising order, each once`,
  }
}

export function linesPastPattern({wanted, laid}: {wanted: number; laid: number}): Wording {
  return {
    message: `${wanted} lines, but the pattern lists ${laid} and repeats only if its last is the octave (12); ${laid} would do`,
    expected: [`${laid}`],
  }
}

/** Either `free` lines end before the bridge, or one was `measured` past it. */
export function linePastBridge(found: {label: string} & ({free: number} | {measured: string})): Wording {
  if ('measured' in found)
    return {
      message: `line ${found.label} was measured at ${found.measured}, past the bridge, which lies at the scale length; measure it from the nut line`,
    }
  return {
    message: `line ${found.label} would lie under the bridge; ${found.free} lines are the most that end before it`,
    expected: [`${found.free}`],
  }
}

export function fretOffBoard(
  {label, endMm, neededMm, holds}: NonNullable<Fretting['offBoard']>,
  ruler: Ruler,
): Wording {
  if (holds !== undefined)
    return {
      message: `fret ${label} would lie over the box, where a neck that runs through is cut down and carries no fingerboard; ${holds} lines stop before it`,
      ...(holds > 0 ? {expected: [String(holds)]} : {}),
    }
  const needed = writeLength(neededMm, ruler, 'up')
  return {
    message: `the fingerboard ends ${writeLength(endMm, ruler, 'down')} from the nut, before fret ${label}; ${needed} holds them all`,
    expected: [needed],
  }
}

/** `near` is the nearest line before it. */
export function dotWithoutLine({
  label,
  labels,
  near,
}: {
  label: string
  labels: readonly string[]
  near: string | undefined
}): Wording {
  const reach =
    labels.length === 0 ? 'there are no lines' : `the lines run from ${labels[0]} to ${labels.at(-1)}`
  return {
    message: `a dot on line ${label}, which is not there: ${reach}${near ? `; ${near} is the nearest before it` : ''}`,
    expected: only(near),
  }
}

export function temperamentNotRising({step, before}: {step: string; before: string | undefined}): Wording {
  return {
    message: `${step} is not above ${before ?? 'the open string'}; the twelve steps rise from the open string to the octave`,
  }
}

/** The octave is written as the step is: a ratio or cents. */
export function temperamentOctave({last}: {last: string}): Wording {
  const octave = /[/:]/.test(last) ? '2/1' : '1200'
  return {
    message: `the twelfth step is ${last} and must be the octave, from which the steps repeat; ${octave} would do`,
    expected: [octave],
  }
}
