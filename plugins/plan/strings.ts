import {stringNames} from '../build-file/path.ts'
import {noteFrequencyHz} from './notes.ts'
import type {Settled} from './settled.ts'
import {type CoreDoubt, coreDoubt, type StringFacts, stringFacts} from './string-facts.ts'
import {type Alternative, alternatives, type PacketOff, packetSlip} from './string-gauges.ts'
import {type Balance, balance, mendString, type StringMend} from './string-mends.ts'
import {clearOfBreaking} from './string-notes.ts'

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
export function planStrings({values, units, referenceHz}: Settled): StringSet | undefined {
  const listed = (values.strings ?? []).flatMap((string) =>
    string.note ? [{...string, note: string.note}] : [],
  )
  if (listed.length === 0 || listed.length !== values.strings?.length) return undefined
  const play = values.play?.value
  const lengthMm = values.scale?.length?.mm
  const names = stringNames(listed)
  const places = listed.map(({note}) => ({
    frequencyHz: noteFrequencyHz(note.midi, referenceHz),
    lengthMm,
    play,
  }))
  const facts = listed.map((string, i) => stringFacts(string, places[i]!))
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
  const pullsN = strings.flatMap(({tensionN, course}) => (tensionN === undefined ? [] : [tensionN * course]))
  const isWhole = pullsN.length === strings.length
  return {strings, tensionTotalN: isWhole ? pullsN.reduce((sum, one) => sum + one, 0) : undefined}
}
