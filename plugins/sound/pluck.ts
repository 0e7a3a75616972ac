/** A string as it sounds: its pitch, which is that of its first partial, and its stiffness. */
export interface Sounding {
  frequencyHz: number
  /** B in f_n = n·f_0·√(1 + B·n²). */
  inharmonicity: number
}

/** Where it is plucked, from the bridge, as a part of its length: common practice, no source. */
const pluckedAt = 0.13
/** How long the first partial takes to fall to 1/e (s), and how much sooner higher ones do: common practice, no source. */
const decayS = 1.1
const decayGrows = 0.02
/** As loud as a voice in the room at most: a part of full scale. */
const loudest = 0.25
const mostPartials = 60

/** List the partials of a stiff string (Hz) below a limit, the first at its pitch: f_n = n·f_0·√(1 + B·n²). */
export function partialsOf({frequencyHz, inharmonicity: b}: Sounding, belowHz: number): number[] {
  const f0 = frequencyHz / Math.sqrt(1 + b)
  const all = Array.from({length: mostPartials}, (_, i) => (i + 1) * f0 * Math.sqrt(1 + b * (i + 1) ** 2))
  return all.filter((hz) => hz < belowHz)
}

/**
 * Render a plucked string as samples from −1 to 1: each partial as strong as a string that is pulled aside at a point and
 * let go presses on its bridge with it, sin(nπp)/n, and dying away. It starts and ends in silence.
 *
 * Source: Fletcher, J. Acoust. Soc. Am. 36, 203 (1964), for the partials; the ideal plucked string, for their strengths.
 */
export function pluck(string: Sounding, sampleRateHz: number, seconds: number): Float32Array<ArrayBuffer> {
  const count = Math.round(sampleRateHz * seconds)
  const samples = new Float32Array(count)
  for (const [i, hz] of partialsOf(string, 0.45 * sampleRateHz).entries()) {
    const n = i + 1
    const strength = Math.sin(n * Math.PI * pluckedAt) / n
    const fade = Math.exp(-(1 + decayGrows * n ** 2) / (decayS * sampleRateHz))
    // A turning pointer: one multiplication a sample instead of a sine.
    const turn = (2 * Math.PI * hz) / sampleRateHz
    const [cos, sin] = [Math.cos(turn) * fade, Math.sin(turn) * fade]
    let [x, y] = [strength, 0]
    for (let at = 0; at < count; at += 1) {
      samples[at]! += y
      const next = x * cos - y * sin
      y = x * sin + y * cos
      x = next
    }
  }
  return quietly(samples, sampleRateHz)
}

/** Bring samples down to what is quiet, without a click at either end. */
function quietly(samples: Float32Array<ArrayBuffer>, sampleRateHz: number): Float32Array<ArrayBuffer> {
  const most = samples.reduce((peak, one) => Math.max(peak, Math.abs(one)), 0) || 1
  const edge = Math.round(0.004 * sampleRateHz)
  const end = Math.round(0.15 * sampleRateHz)
  return samples.map((one, at) => {
    const near = Math.min(1, at / edge, (samples.length - 1 - at) / end)
    return (one * loudest * near) / most
  })
}
