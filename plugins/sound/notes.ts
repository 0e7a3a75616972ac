import type {Plan} from '../plan/plan.ts'
import type {Sounding} from './pluck.ts'

/** A note of a string, by its line: as it is meant, and by how much (cents) it is off as made; sharp is positive. */
export interface HeardNote extends Sounding {
  /** `0` is the open string. */
  label: string
  /** With the line on its mark and the bridge on its line. */
  markedCents?: number | undefined
  /** With the saddle set back as well. */
  setBackCents?: number | undefined
}

export interface HeardString {
  name: string
  notes: HeardNote[]
}

/** List what can be heard of a plan: each string whose stiffness is known, open and at each line. */
export function heardStrings({strings = [], scale, intonation}: Plan): HeardString[] {
  return strings.flatMap(({name, frequencyHz, inharmonicity}, i) => {
    if (inharmonicity === undefined) return []
    const {plainCents, compensatedCents} = intonation?.[i] ?? {}
    const notes = (scale?.lines ?? []).map(({label, cents, markErrorCents}, at): HeardNote => {
      const ratio = 2 ** (cents / 1200)
      const off = (own: number[] | undefined) =>
        own?.[at] === undefined ? undefined : own[at] + markErrorCents
      return {
        label,
        frequencyHz: frequencyHz * ratio,
        // B grows with 1/L² (Fletcher 1964).
        inharmonicity: inharmonicity * ratio ** 2,
        markedCents: intonation ? off(plainCents) : markErrorCents,
        setBackCents: off(compensatedCents),
      }
    })
    return [{name, notes: [{label: '0', frequencyHz, inharmonicity}, ...notes]}]
  })
}
