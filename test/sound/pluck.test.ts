import {describe, expect, test} from 'vitest'
import {pluck} from '../../plugins/sound/pluck.ts'
import '../support/slow.ts'

const rate = 44_100

/** How strongly a frequency is in a stretch of samples, seen through a Hann window: the discrete Fourier transform, written out. */
function strength(samples: Float32Array, hz: number): number {
  let [re, im] = [0, 0]
  const turn = (2 * Math.PI * hz) / rate
  for (const [at, one] of samples.entries()) {
    const seen = one * (0.5 - 0.5 * Math.cos((2 * Math.PI * at) / samples.length))
    re += seen * Math.cos(turn * at)
    im -= seen * Math.sin(turn * at)
  }
  return Math.hypot(re, im)
}

/** Find the frequency that is strongest within half a semitone of another, to a tenth of a cent. */
function peakHz(samples: Float32Array, nearHz: number): number {
  let [low, high] = [nearHz * 2 ** (-50 / 1200), nearHz * 2 ** (50 / 1200)]
  // The peak of the window is one hill: halve by the golden section.
  const golden = (Math.sqrt(5) - 1) / 2
  while (1200 * Math.log2(high / low) > 0.05) {
    const [a, b] = [high - golden * (high - low), low + golden * (high - low)]
    if (strength(samples, a) > strength(samples, b)) high = b
    else low = a
  }
  return (low + high) / 2
}

// Outside check: Fletcher's partials (J. Acoust. Soc. Am. 36, 203, 1964), found again in the samples by Fourier's transform.
describe.each([
  ['thin steel at D4', 293.665, 2e-5],
  ['wound at D3', 146.832, 8e-5],
  ['thick steel at G3', 195.998, 6e-4],
  ['a string without stiffness', 220, 0],
])('%s', (_, frequencyHz, inharmonicity) => {
  const samples = pluck({frequencyHz, inharmonicity}, rate, 1.2).subarray(4410, 4410 + 26_460)

  test.each([1, 2, 3, 5])('has its partial %d within a cent of where a stiff string has it', (n) => {
    const meant = (n * frequencyHz * Math.sqrt(1 + inharmonicity * n ** 2)) / Math.sqrt(1 + inharmonicity)
    expect(Math.abs(1200 * Math.log2(peakHz(samples, meant) / meant))).toBeLessThan(1)
  })
})

test('is quiet, and starts and ends without a click', () => {
  for (const hz of [40, 82, 330, 1200, 4000]) {
    const samples = pluck({frequencyHz: hz, inharmonicity: 1e-4}, rate, 1)
    const most = samples.reduce((peak, one) => Math.max(peak, Math.abs(one)), 0)
    expect(most).toBeGreaterThan(0.05)
    expect(most).toBeLessThanOrEqual(0.2501)
    expect(Math.abs(samples[0]!)).toBeLessThan(1e-6)
    expect(Math.abs(samples.at(-1)!)).toBeLessThan(1e-6)
    expect(samples.every(Number.isFinite)).toBe(true)
  }
})

test('a nut’s octave below and above what is heard does not fold back', () => {
  expect(pluck({frequencyHz: 30_000, inharmonicity: 0}, rate, 0.1).every((one) => one === 0)).toBe(true)
})
