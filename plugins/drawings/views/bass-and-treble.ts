import type {Hand} from '../instrument/hand.ts'
import type {Text} from '../kit/shape.ts'

/** Write which side is the bass and which the treble, at the two ends of a width, in mm. */
export function bassAndTreble({bass}: Hand, halfMm: number, y: number, sizeMm: number): Text[] {
  const word = (text: string, side: number): Text => ({
    is: 'text',
    ink: 'name',
    at: [side * halfMm, y],
    text,
    sizeMm,
    anchor: side < 0 ? 'start' : 'end',
  })
  return [word('bass', bass), word('treble', -bass)]
}
