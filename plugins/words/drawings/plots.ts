// What is written on plots and on the wiring drawing.

export const plotTitles = {pull: 'Pull of each string', cents: 'Cents off at each line', wiring: 'Wiring'}

/** What a string's pull feels like, from none up. */
export const pullZones = ['slack', 'easy', 'firm', 'stiff'] as const

/** Write cents on an axis, sharp with its plus: `+5`, `0`, `−5`. */
export const axisCents = (cents: number): string =>
  `${cents > 0 ? '+' : cents < 0 ? '−' : ''}${Math.abs(cents)}`

export const wiringWords = {
  piezo: 'disc',
  magnetic: 'coil',
  microphone: 'microphone',
  strings: 'strings',
  live: 'live',
  ground: 'ground',
  discLive: 'live, from the middle',
  discGround: 'ground, from the brass rim',
  stringsGround: 'from the bridge or the anchors',
  tip: 'tip',
  sleeve: 'sleeve',
  jack: 'jack',
} as const

export const familyWords = {
  title: 'Builds copied from each other',
  name: (title: string, isMissing: boolean): string => (isMissing ? `${title}, not in this journal` : title),
}
