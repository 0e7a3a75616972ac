import {hypotenuse} from './hypotenuse.ts'

/** A string pressed to a fret: lengths in mm along the neck before and behind it, and heights as in FrettedString. */
export interface PressedString {
  /** From the fret to the saddle. */
  frontMm: number
  /** From the nut to the fret. */
  backMm: number
  nutHeightMm: number
  riseMm: number
  fingerMm: number
}

/**
 * Give how much longer a string becomes when it is pressed to a fret, as a part of its open length (Q). Behind the fret
 * it goes straight on down to the finger, and from there up to the nut.
 * Source: Anderson and Beausoleil, J. Acoust. Soc. Am. 156, 683 (2024).
 */
export function pressedStretch({frontMm, backMm, nutHeightMm, riseMm, fingerMm}: PressedString): number {
  const atSaddleMm = nutHeightMm + riseMm
  const openMm = hypotenuse(frontMm + backMm, riseMm)
  const soundingMm = hypotenuse(frontMm, atSaddleMm)
  const toFingerMm = (soundingMm * fingerMm) / frontMm
  const toNutMm = hypotenuse(backMm - fingerMm, nutHeightMm + (fingerMm * atSaddleMm) / frontMm)
  return (soundingMm + toFingerMm + toNutMm - openMm) / openMm
}
