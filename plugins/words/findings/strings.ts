import {writeLength} from '../../build-file/quantities/write-length.ts'
import type {Plan} from '../../plan/plan.ts'
import type {StringMend} from '../../plan/strings/string-mends.ts'
import type {StringPlan} from '../../plan/strings/strings.ts'
import {type Ruler, writeGauge} from '../lengths.ts'
import {writeForce} from '../measured.ts'
import {only, type Wording, type WouldDo} from './wording.ts'

/** What is wrong with one string. */
interface OfString {
  string: StringPlan
}

/** A wound string has its weight from the wrap, so a lighter one spares the core; a plain one only a lower note. */
export function stringNearBreaking(
  {string, severity}: OfString & {severity?: string | undefined},
  {strings = [], units}: Plan,
): Wording {
  const {note, breakFraction = 0, wound, alternatives, mend} = string
  const found =
    severity === 'fault'
      ? `breaks before it reaches ${note}`
      : `is tuned to ${Math.round(breakFraction * 100)} % of its strength${severity === 'warning' ? ' and will not last' : ''}`
  const gauges = wound ? alternatives?.map(({gauge}) => writeGauge(gauge, units)) : undefined
  const does = gauges ? `${gauges.join(', ')} would spare its core` : lowerInWords(mend, strings.length)
  return {message: `${called(string)} ${found}; ${does}`, expected: gauges ?? only(mend?.note)}
}

/** One note changed is another tuning, so what keeps the tuning stands beside it. */
function lowerInWords(mend: StringMend | undefined, count: number): string {
  const {note, lowerBy = 0} = mend ?? {}
  if (count === 1)
    return `${note ?? 'a lower note'} is the highest note that keeps clear on this scale length`
  const all = `${lowerBy} ${lowerBy === 1 ? 'semitone' : 'semitones'} lower, all strings keep their tuning and clear of it`
  return note === undefined ? all : `${note} keeps clear and leaves a tuning; ${all}`
}

export function stringSlack({string}: OfString, {units, play}: Plan): Wording {
  const so = play === 'slide' ? 'a slide presses down to the lines' : 'is slack and buzzes'
  return pulls(string, `, which ${so}`, units)
}

export function stringStiff({string}: OfString, {units}: Ruler): Wording {
  return pulls(string, ', which is stiff', units)
}

export function stringUneven({string}: OfString, {units}: Ruler): Wording {
  const {offMedian = 0} = string
  const off = `${Math.abs(Math.round(offMedian * 100))} % ${offMedian > 0 ? 'more' : 'less'}`
  return pulls(string, `, ${off} than the middle of the strings like it`, units)
}

/** `anchorsAtMm` is the furthest place of the anchors that a packet's string reaches, where they can be moved. */
export function stringTooLong(
  {
    name,
    lengthNeededMm,
    packetMm,
    anchorsAtMm,
  }: {name: string; lengthNeededMm: number; packetMm: number; anchorsAtMm: number | undefined},
  ruler: Ruler,
): Wording {
  const found = `${name} needs ${writeLength(lengthNeededMm, ruler, 'up')} of string from anchor to post, winds included; a packet holds about ${writeLength(packetMm, ruler)}`
  if (anchorsAtMm === undefined)
    return {message: `${found}: shorten the scale or the head, or buy strings made for long scales`}
  const place = writeLength(anchorsAtMm, ruler, 'down')
  return {
    message: `${found}: anchors at ${place} would do, or strings made for long scales`,
    expected: [place],
  }
}

/** Word a pull that is off, and what would bring it right: other gauges, or another packet where that tells mass or pull. */
function pulls(string: StringPlan, so: string, units: 'in' | 'mm'): Wording {
  const {tensionN = 0, mend} = string
  const gauges = (string.alternatives ?? []).map((one) => ({...one, gauge: writeGauge(one.gauge, units)}))
  const found = `${called(string)} pulls ${writeForce(tensionN, units)}${so}`
  const does =
    gauges.length > 0
      ? gauges.map(({gauge, tensionN}) => `${gauge} would pull ${writeForce(tensionN, units)}`).join(', ')
      : string.massFrom === 'mass' || string.massFrom === 'tension'
        ? undefined
        : `no common gauge carries ${string.note} here; another note or scale length would`
  const also = does === undefined ? '' : `; ${does}`
  if (string.packetOff?.modelFits || string.packetOff?.gauge)
    return {
      message: `${found}; but its packet and its gauge have little to do with each other: look at the packet first`,
    }
  const grams = mend && `${(mend.massKgM * 1000).toFixed(2)} g/m`
  if (string.massFrom === 'mass' && mend)
    return {
      message: `${found}; ${grams} is right${mend.isOfGauge ? '' : ', which is another gauge'}${also}`,
      expected: mend.isOfGauge ? only(grams) : undefined,
    }
  if (string.massFrom === 'tension' && mend?.packetN !== undefined) {
    const pull = `${mend.packetN.toFixed(0)} N`
    return {
      message: `${found}; a packet that prints ${pull} is right${mend.isOfGauge ? '' : ', which is another gauge'}${also}`,
      expected: mend.isOfGauge ? [pull] : undefined,
    }
  }
  return {
    message: `${found}${also}`,
    expected: gauges.length > 0 ? gauges.map(({gauge}) => gauge) : undefined,
  }
}

/** Name a string and its gauge as the file writes them: `D4 .013`. */
const called = ({name, gauge}: StringPlan): string => (gauge ? `${name} ${gauge}` : name)

interface Near {
  where: string
  gapMm: number
  needsMm: number
  wouldDo?: WouldDo | undefined
}

export function stringNearEdge({where, gapMm, needsMm, wouldDo}: Near, ruler: Ruler): Wording {
  const text = wouldDo && writeLength(wouldDo.mm, ruler)
  const found = gapMm <= 0 ? 'off the neck' : `${writeLength(gapMm, ruler, 'down')} from the neck’s edge`
  return {
    message: `the outer strings lie ${found} at the ${where}; ${writeLength(needsMm, ruler, 'up')} keeps them from slipping off${text ? `: ${wouldDo.path} ${text} would do` : ''}`,
    expected: only(text),
  }
}

export function stringsTooClose({where, gapMm, needsMm, wouldDo}: Near, ruler: Ruler): Wording {
  const text = wouldDo && writeLength(wouldDo.mm, ruler)
  const mend = text ? `${wouldDo.path} ${text} would do` : 'a wider neck and a wider spacing would do'
  return {
    message: `neighbouring strings are ${writeLength(gapMm, ruler, 'down')} apart at the ${where}, where fingers need ${writeLength(needsMm, ruler, 'up')}; ${mend}`,
    expected: only(text),
  }
}
