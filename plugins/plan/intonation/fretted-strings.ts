import type {Settled} from '../part.ts'
import type {Plan} from '../shape/plan.ts'
import type {Fret, FrettedString} from './fretted-string.ts'

/** How many lines from the nut a setback is chosen by. */
const linesHeard = 12

export interface Fretting {
  /** Every line of the scale, in order from the nut. */
  frets: Fret[]
  /** The lines that setbacks are chosen by: the first twelve from the nut, half frets counted, or all if fewer. */
  heard: Fret[]
  strings: {name: string; at: number; string: FrettedString}[]
}

/**
 * Gather what the model of intonation needs of a fretted build whose strings, lines and heights are planned; strings
 * whose pull or stiffness is not known are left out. Undefined where there are no frets, or nothing to say of them.
 */
export function frettedStrings({values}: Settled, plan: Plan): Fretting | undefined {
  const {scale, strings, action} = plan
  const scaleMm = values.scale?.length?.mm
  if (!values.scale?.fretted?.value || !scale?.lines?.length || !strings || !action || scaleMm === undefined)
    return undefined
  const frets = scale.lines.map(({cents, fromPreviousMm}) => ({
    ratio: 2 ** (cents / 1200),
    roomMm: fromPreviousMm,
  }))
  const common = {
    scaleMm,
    nutHeightMm: action.nutMm,
    riseMm: action.bridgeHeightMm - action.crownMm - action.nutMm,
    fingerMm: values.action?.finger?.mm ?? 0,
    reliefMm: action.reliefMm,
  }
  return {
    frets,
    heard: frets.slice(0, linesHeard),
    strings: strings.flatMap(({name, tensionN, stiffnessMpa, sectionMm}, at) => {
      if (tensionN === undefined || stiffnessMpa === undefined || sectionMm === undefined) return []
      const radiusMm = sectionMm / 2
      const kappa = (Math.PI * radiusMm ** 2 * stiffnessMpa) / tensionN
      return [{name, at, string: {...common, radiusMm, kappa}}]
    }),
  }
}
