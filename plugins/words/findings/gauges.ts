import type {PacketOff} from '../../plan/strings/string-gauges.ts'
import {type Ruler, writeGauge} from '../lengths.ts'
import {gramsPerMetre, massPerLength} from '../quantities.ts'
import {only, type Wording} from './wording.ts'

/** `given` are the parts that only a wound string has. */
export function woundTooThin({
  gauge,
  plain,
  given,
}: {
  gauge: string
  plain: string
  given: readonly ('core' | 'wrap')[]
}): Wording {
  if (given.length > 0) {
    const what = given.map((part) => `a ${part}`).join(' and ')
    return {
      message: `no wound string is as thin as ${gauge}, yet ${what} is given; look at the packet again, or take ${given.join(' and ')} out and write ${plain} for a plain string`,
    }
  }
  return {
    message: `no wound string is as thin as ${gauge}; ${plain} is a plain string`,
    expected: [plain],
  }
}

export function coreNotInside({
  core,
  gauge,
  isWhole,
}: {
  core: string
  gauge: string
  isWhole: boolean
}): Wording {
  const found = isWhole ? 'is no thinner than the whole string' : 'leaves no room for a wrap'
  return {message: `a core of ${core} ${found}, ${gauge}; leave it out, and the usual one is taken`}
}

/** `given` are the parts that only a wound string has. */
export function coreOnPlain({
  gauge,
  wound,
  given,
}: {
  gauge: string
  wound: string | undefined
  given: readonly ('core' | 'wrap')[]
}): Wording {
  const what = given.map((part) => `a ${part}`).join(' and ')
  const mend = wound
    ? `write ${wound} if it is wound`
    : `look at the packet again, or take ${given.join(' and ')} out: a wound string is thicker`
  return {
    message: `${gauge} is a plain string, and a plain string has no core and no wrap, yet ${what} is given; ${mend}`,
    expected: only(wound),
  }
}

export function stringMaterialOpen({gauge, wound}: {gauge: string; wound: string}): Wording {
  return {
    message: `${gauge} is thick for a plain steel string, so its pull is left open; write ${wound} if it is wound, or add its material`,
    expected: [wound],
  }
}

export function packetIncomplete({lacks}: {lacks: readonly string[]}): Wording {
  return {
    message: `the packet’s pull is not used: it lacks its ${lacks.join(' and ')}; write it as {pull: 60 N, scale: 25 1/2 in, note: D4}`,
  }
}

/** `pullN` is what the packet would print of a string that weighs as the model has it, where it prints pulls. */
export function packetUnlikeGauge(
  {
    name,
    written,
    coreAssumed,
    packetKgM,
    modelKgM,
    modelFits,
    gauge,
    pullN,
  }: PacketOff & {
    name: string
    /** The gauge as the file has it. */
    written: string
    coreAssumed?: boolean | undefined
    pullN: number | undefined
  },
  {units}: Ruler,
): Wording {
  const weighing = gauge && writeGauge(gauge, units)
  const core = coreAssumed ? ' with a usual core' : ''
  return {
    message: `${name} weighs ${massPerLength(packetKgM)} by its packet, and ${massPerLength(modelKgM)} by its gauge, ${written}${core}; the packet counts: look at it again${modelFits || !weighing ? '' : `; ${weighing} would weigh so`}`,
    expected: modelFits
      ? [pullN === undefined ? `${gramsPerMetre(modelKgM)} g/m` : `${pullN.toFixed(1)} N`]
      : only(weighing),
  }
}

export function pitchesOutOfOrder({note, before}: {note: string; before: string}): Wording {
  return {
    message: `${note} is lower than ${before} before it, and strings are listed from the player’s bass side; leave it where the tuning is meant so`,
  }
}
