import {stringNames} from '../../build-file/schema/path.ts'
import {noteFrequencyHz} from '../kit/notes.ts'
import type {Settled} from '../kit/settled.ts'
import {type CoreDoubt, coreDoubt, type StringFacts, stringFacts} from './string-facts.ts'
import {type Alternative, alternatives, type PacketOff, packetSlip} from './string-gauges.ts'
import {type Balance, balance, clearOfBreaking, mendString, type StringMend} from './string-mends.ts'

/** How long a string has to be, in mm. */
interface StringLength {
  /** From its anchor over bridge and nut to the post, winds included. */
  lengthNeededMm: number
  /** From its anchor to its post, where both are placed. */
  wholeMm?: number | undefined
  /** Its stretch at pitch over all of that: where it slides over nut and bridge. */
  stretchWholeMm?: number | undefined
  /** How long the string of a packet is. */
  packetMm?: number | undefined
  /** The furthest place of its anchor that a packet’s string reaches. */
  anchorWithinMm?: number | undefined
  /** Turns of the tuner's button from taut to pitch. */
  buttonTurns?: number | undefined
}

/** A string on this scale. */
export interface StringPlan extends StringFacts, Omit<Balance, 'targetN'>, Partial<StringLength> {
  /** Its note; a second one D4-2. */
  name: string
  note: string
  /** How many strings run together. */
  course: number
  /** With an assumed core a twentieth of the gauge thinner and thicker. */
  coreDoubt?: CoreDoubt | undefined
  /** Common gauges that would do, the one nearest to the pull to aim for first. */
  alternatives?: Alternative[] | undefined
  mend?: StringMend | undefined
  /** Where its packet and its gauge differ much. */
  packetOff?: PacketOff | undefined
}

/** The strings in the file's order, and the pull of all together, every string of a course counted. */
export interface StringSet {
  strings: StringPlan[]
  tensionTotalN: number | undefined
}

/** Compute each string at its pitch on this scale, and the common gauges that would do; undefined until each has a note. */
export function planStrings(settled: Settled): StringSet | undefined {
  const {values, units} = settled
  const known = factsOf(settled)
  if (!known) return undefined
  const {listed, places, facts} = known
  const play = values.play?.value
  const names = stringNames(listed)
  const balanced = balance(facts, play)
  const midis = listed.map(({note}) => note.midi)
  const strings = listed.map((string, i): StringPlan => {
    const {targetN, ...off} = balanced[i]!
    const mended = mendString(string, places[i]!, facts[i]!, balanced[i]!)
    const others = alternatives(string, places[i]!, targetN, units)
    return {
      name: names[i]!,
      note: string.note.name,
      course: string.course?.value ?? 1,
      ...facts[i]!,
      ...off,
      coreDoubt: coreDoubt(string, places[i]!),
      mend: mended && {...mended, ...clearOfBreaking(i, {midis, facts, play})},
      packetOff: packetSlip(string, places[i]!, targetN, units),
      alternatives: others.length > 0 ? others : undefined,
    }
  })
  return {strings, tensionTotalN: pullOf(known)}
}

/** Say what all strings pull together (N), as planStrings does; undefined until each has a note and its pull is known. */
export function planPull(settled: Settled): number | undefined {
  const known = factsOf(settled)
  return known && pullOf(known)
}

/** Gather what is known of each string by itself; undefined until each has a note. */
function factsOf({values, referenceHz}: Settled) {
  const listed = (values.strings ?? []).flatMap((string) =>
    string.note ? [{...string, note: string.note}] : [],
  )
  if (listed.length === 0 || listed.length !== values.strings?.length) return undefined
  const play = values.play?.value
  const lengthMm = values.scale?.length?.mm
  const places = listed.map(({note}) => ({
    frequencyHz: noteFrequencyHz(note.midi, referenceHz),
    lengthMm,
    play,
  }))
  return {listed, places, facts: listed.map((string, i) => stringFacts(string, places[i]!))}
}

function pullOf({listed, facts}: NonNullable<ReturnType<typeof factsOf>>): number | undefined {
  let sumN = 0
  for (const [i, {tensionN}] of facts.entries()) {
    if (tensionN === undefined) return undefined
    sumN += tensionN * (listed[i]!.course?.value ?? 1)
  }
  return sumN
}
