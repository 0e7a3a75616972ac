/**
 * How hard a string pulls, as players feel it: below `slackN` it is slack, up to `easyN` easy, up to `firmN` firm,
 * above that stiff. A slide wants steel a little tighter. Common practice, no source.
 */
export interface StringPullRow {
  slackN: number
  slackUnderSlideN: number
  easyN: number
  firmN: number
}

export const stringPulls = {
  steel: {slackN: 45, slackUnderSlideN: 55, easyN: 75, firmN: 120},
  nylon: {slackN: 30, slackUnderSlideN: 30, easyN: 50, firmN: 75},
} as const satisfies Record<string, StringPullRow>

/** How far one string may pull off the median of its material before the set feels uneven. Common practice, no source. */
export const unevenPull = 0.45

/**
 * How near its strength a string may be tuned: at the first it wears and breaks sooner, at the second it seldom
 * lasts, at the third it does not reach the pitch. The wire’s elastic limit lies at 0.65 to 0.75 of its strength
 * (Shigley’s Mechanical Engineering Design, Table 10-5); the figures themselves are common practice, no source.
 */
export const breakLimits = {near: 0.7, nearer: 0.8, broken: 1}
