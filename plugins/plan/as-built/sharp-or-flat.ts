import {noticeableCents} from '../../tables/hearing.ts'

/** Say a difference of pitch (cents) in words: `2.2 cents flat, less than ears notice`. */
export function sharpOrFlat(cents: number): string {
  const unheard = Math.abs(cents) < noticeableCents ? ', less than ears notice' : ''
  return `${Math.abs(cents).toFixed(1)} cents ${cents > 0 ? 'sharp' : 'flat'}${unheard}`
}
