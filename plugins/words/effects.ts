import {fineRulers} from '../build-file/quantities/write-length.ts'
import type {Felt} from '../plan/effects.ts'
import {lengthWords, type Ruler} from './lengths.ts'
import {forceWords, number} from './quantities.ts'

/** Something that is felt otherwise: what, and how it was and is, in the build's units. */
export interface FeltRow {
  name: string
  was: string
  is: string
}

const fine = (mm: number, {units}: Ruler) => lengthWords(mm, fineRulers[units])

function clear(mm: number, ruler: Ruler): string {
  if (Math.abs(mm) < ruler.rulerMm / 2) return 'at the box'
  return `${lengthWords(Math.abs(mm), ruler)} ${mm < 0 ? 'over' : 'before'} the box`
}

type Write = (felt: Felt, ruler: Ruler) => string | undefined

const aboutHz = (hz: number): string => `about ${Math.round(hz / 5) * 5} Hz`

/** How each is written where it is known, in the order that a player asks; what is added to it makes no difference. */
const written: readonly (readonly [
  name: string,
  write: Write,
  added?: (felt: Felt) => string | undefined,
])[] = [
  ['pull of all strings', ({pullN}, ruler) => known(pullN, (n) => forceWords(n, ruler))],
  ['bridge line', ({bridgeMm}, ruler) => known(bridgeMm, (mm) => lengthWords(mm, ruler))],
  ['strings over the octave', ({octaveMm}, ruler) => known(octaveMm, (mm) => fine(mm, ruler))],
  [
    'bridge over the playing face',
    ({bridgeHeightMm}, ruler) => known(bridgeHeightMm, (mm) => fine(mm, ruler)),
  ],
  ['last line', ({lastLineClearMm}, ruler) => known(lastLineClearMm, (mm) => clear(mm, ruler))],
  ['hollow of the neck', ({bowMm}) => known(bowMm, (mm) => `${number(mm, 1)} mm`)],
  [
    'note of the air',
    ({airHz}) => known(airHz, aboutHz),
    // The same pitch, as far as it is known, may lie at either side of the bound between two notes.
    ({airNote}) => airNote,
  ],
  [
    'worst note, bridge on its line',
    ({worstCents}) => known(worstCents, (off) => `${number(off, 0)} cents off`),
  ],
]

const known = (value: number | undefined, write: (value: number) => string) =>
  value === undefined ? undefined : write(value)

/** List what is felt otherwise, as far as it is known of both and can be read off what is written. */
export function feltOtherwise(was: Felt, is: Felt, ruler: Ruler): FeltRow[] {
  return written.flatMap(([name, write, added]) => {
    const [before, now] = [write(was, ruler), write(is, ruler)]
    const whole = (felt: Felt, text: string) => [added?.(felt), text].filter(Boolean).join(', ')
    return before && now && before !== now ? [{name, was: whole(was, before), is: whole(is, now)}] : []
  })
}

/** Say it in a line: `pull of all strings 47.8 lbf instead of 54.1 lbf`. */
export const insteadOf = ({name, was, is}: FeltRow): string => `${name} ${is} instead of ${was}`
