/**
 * A string over frets, as Anderson and Beausoleil describe it; lengths in mm.
 * `nutHeightMm` (b) is its height above the crowns at the nut, `riseMm` (c) how much higher the saddle stands,
 * `fingerMm` (d) how far behind the fret the finger presses, `reliefMm` the hollow of the neck at the octave;
 * `radiusMm` (ρ) is that of what resists bending, `kappa` (κ = πρ²E/T) how much the pull grows with stretch.
 * `spread` is 1, or left out, where the string sticks at nut and saddle, as published; where it slides over them, its whole length
 * from anchor to post over the scale length, since all of it then shares the stretch.
 */
export interface FrettedString {
  scaleMm: number
  nutHeightMm: number
  riseMm: number
  fingerMm: number
  reliefMm: number
  radiusMm: number
  kappa: number
  spread?: number | undefined
}

/** A fret: the frequency ratio that it should give (γ), and the room for a finger behind it, in mm. */
export interface Fret {
  ratio: number
  roomMm: number
}

/** How far the saddle stands behind the bridge line, and the nut behind the nut line; each lengthens the string. */
export interface Ends {
  saddleMm: number
  nutMm: number
}

/** How sharp a fretted note is, in cents, and how fast that grows as saddle and nut are set back, in cents per mm. */
export interface Sharpness {
  cents: number
  perSaddleMm: number
  perNutMm: number
}

const centsPerE = 1200 / Math.LN2

/**
 * Give the cents by which a fretted note is sharp of what its fret should give, the open string being in tune: the
 * full model, string pinned at the saddle and clamped at nut or fret.
 *
 * Past the octave the relief falls off again towards the bridge; up to there it is a straight slope, as published.
 *
 * Source: Anderson and Beausoleil, Classical guitar intonation and compensation, J. Acoust. Soc. Am. 156, 683 (2024);
 * its slopes are the derivatives.
 */
export function sharpness(string: FrettedString, {ratio, roomMm}: Fret, {saddleMm, nutMm}: Ends): Sharpness {
  const {scaleMm, nutHeightMm: b, riseMm: c, fingerMm, reliefMm, radiusMm, kappa, spread = 1} = string
  const sounding = scaleMm / ratio
  const behind = scaleMm - sounding
  // A hollow neck lowers the frets as a higher saddle would, but makes the open string no longer.
  const hollow = reliefMm * Math.min(2, (2 * sounding) / behind)
  const openRunMm = scaleMm + saddleMm + nutMm
  const frontRunMm = sounding + saddleMm
  const openMm = hypotenuse(openRunMm, c)
  const frontMm = hypotenuse(frontRunMm, b + c)
  const pressed = pressedStretch({
    frontMm: frontRunMm,
    backMm: behind + nutMm,
    nutHeightMm: b,
    riseMm: c + hollow,
    fingerMm: Math.min(fingerMm, roomMm),
  })
  const stretch = pressed.stretch / spread
  const pullRatio = 1 + kappa * stretch
  const openB = (Math.sqrt(kappa) * radiusMm) / (2 * scaleMm)
  const frettedB = (openB * (openMm / frontMm)) / Math.sqrt(pullRatio)
  const pitch = ((openMm / (ratio * frontMm)) * stiffer(frettedB)) / stiffer(openB)
  const bending = (frettedB * (1 + 2 * perSquare * frettedB)) / stiffer(frettedB)
  /** By how much the open string grows over what sounds, and what sounds is stretched. */
  const slope = (longer: number, stretched: number) => {
    const tighter = (kappa * stretched) / pullRatio
    return centsPerE * (longer + (stretched / (1 + stretch) + tighter) / 2 + bending * (longer - tighter / 2))
  }
  const openGrows = openRunMm / (openMm * openMm)
  return {
    cents: 600 * Math.log2(pitch * pitch * (1 + stretch) * pullRatio),
    perSaddleMm: slope(openGrows - frontRunMm / (frontMm * frontMm), pressed.perFrontMm / spread),
    perNutMm: slope(openGrows, pressed.perBackMm / spread),
  }
}

/** Of what stiffness does to the first partial, the part that grows with the square. */
const perSquare = 1 + Math.PI ** 2 / 2

/** What stiffness does to the first partial of a string pinned at one end and clamped at the other. */
function stiffer(b: number): number {
  return 1 + b + perSquare * b * b
}

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

/** How much longer a string becomes, as a part of its open length (Q), and how fast that grows before and behind the fret. */
export interface PressedStretch {
  stretch: number
  perFrontMm: number
  perBackMm: number
}

/**
 * Give how much longer a string becomes when it is pressed to a fret. Behind the fret it goes straight on down to the
 * finger, and from there up to the nut.
 * Source: Anderson and Beausoleil, J. Acoust. Soc. Am. 156, 683 (2024); its slopes are the derivatives.
 */
export function pressedStretch(pressed: PressedString): PressedStretch {
  const {frontMm, backMm, nutHeightMm, riseMm, fingerMm} = pressed
  const atSaddleMm = nutHeightMm + riseMm
  const openMm = hypotenuse(frontMm + backMm, riseMm)
  const soundingMm = hypotenuse(frontMm, atSaddleMm)
  const toFingerMm = (soundingMm * fingerMm) / frontMm
  const fingerHighMm = nutHeightMm + (fingerMm * atSaddleMm) / frontMm
  const toNutMm = hypotenuse(backMm - fingerMm, fingerHighMm)
  const pressedMm = soundingMm + toFingerMm + toNutMm
  // The open string grows alike with what lies before the fret and behind it.
  const openGrows = (pressedMm * (frontMm + backMm)) / (openMm * openMm)
  const falls = (fingerMm * atSaddleMm) / (frontMm * frontMm)
  const frontGrows = (frontMm - falls * atSaddleMm) / soundingMm - (falls * fingerHighMm) / toNutMm
  return {
    stretch: (pressedMm - openMm) / openMm,
    perFrontMm: (frontGrows - openGrows) / openMm,
    perBackMm: ((backMm - fingerMm) / toNutMm - openGrows) / openMm,
  }
}

/** Give the length of a slope from its run and rise. (`Math.hypot` guards against overflow and is many times slower.) */
export function hypotenuse(run: number, rise: number): number {
  return Math.sqrt(run * run + rise * rise)
}
