/** What whole keys are called; a number in them stands as `*`. */
const whole: Readonly<Record<string, string>> = {
  'action.finger': 'finger behind the line',
  'action.nut': 'string height at the nut',
  'action.octave': 'string height at the octave',
  'action.relief': 'relief of the neck',
  'anchors.kind': 'what holds the strings',
  'anchors.spacing': 'spacing of the anchors',
  'box.at': 'box from the nut line',
  'box.back': 'thickness of the back',
  'box.neck-gap': 'daylight between neck and top',
  'box.sides': 'thickness of the walls',
  'bridge.from-tail': 'bridge from the tail of the box',
  'bridge.kind': 'kind of bridge',
  'bridge.on': 'what the bridge stands on',
  'extras.*': 'extra *',
  'frets.material': 'metal of the fret wire',
  'frets.saw-kerf': 'cut of the fret saw',
  'frets.tang': 'thickness of the tang',
  'frets.tang-depth': 'depth of the tang',
  'frets.wire-width': 'width of the fret wire',
  'frets.crown': 'height of the fret wire',
  handed: 'which hand plays',
  'head.angle': 'lean of the head',
  'head.drop': 'drop of the head’s face',
  'head.joint': 'joint of the head',
  'head.ledge': 'ledge behind the nut',
  'head.retainer': 'what holds the strings down behind the nut',
  'markings.dots': 'how dots are made',
  'markings.lines': 'how lines are made',
  'neck.above-top': 'playing face over the top',
  'neck.angle': 'tilt of the neck',
  'neck.glue': 'glue of the neck',
  'neck.inside': 'thickness of the neck inside the box',
  'neck.joins': 'how the neck meets the box',
  'neck.width.nut': 'width of the neck at the nut',
  'neck.width.tail': 'width of the neck at the tail',
  'nut.groove': 'depth of the nut’s groove',
  'nut.kind': 'kind of nut',
  pickup: 'pickup',
  play: 'how it is played',
  'reference-pitch': 'pitch of A4',
  resonance: 'the box’s own pitch',
  scale: 'scale length',
  'scale.dots.*': 'dot *',
  'scale.fretted': 'wire in slots',
  'scale.length': 'scale length',
  'scale.lines': 'how many lines',
  'scale.pattern': 'which lines there are',
  'scale.pattern.*': 'line * of the pattern',
  'scale.temperament': 'how the octave is divided',
  'scale.temperament.*': 'step * of the octave',
  'screws.*.into': 'what screw * holds in',
  'screws.*.size': 'gauge number of screw *',
  'spacing.bridge': 'string spacing at the bridge',
  'spacing.nut': 'string spacing at the nut',
  'spacing.slots': 'how the strings are spaced',
  'strings.*.course': 'strings in the course *',
  'strings.*.note': 'note of *',
  'strings.*.tension': 'pull of *',
  'strings.*.tension.note': 'note of *, as the packet has it',
  'strings.*.tension.pull': 'pull of *, as the packet has it',
  'strings.*.tension.scale': 'scale of *, as the packet has it',
  'tuners.at.*': 'tuner post * from the nut line',
  'tuners.off.*': 'tuner post * off the centre line',
  'tuners.ratio': 'turns of a tuner’s button',
  'tuners.string-height': 'string height at the posts',
  'lines.*': 'line *',
  'cents.*': 'note at line *',
}

/** What a part of the instrument is called, the longest path first. */
const parts = [
  ['neck.laminations.*', 'layer *'],
  ['neck.round-over', 'rounded edge'],
  ['neck.cap', 'cap of the neck'],
  ['head.plate', 'plate of the head'],
  ['box.top', 'top'],
  ['box.holes.*', 'sound hole *'],
  ['box.blocks.*', 'block *'],
  ['box.end-block', 'block behind the neck'],
  ['box.notch', 'notch'],
  ['pickup.jack', 'jack'],
  ['strings.*', '*'],
  ['screws.*', 'screw *'],
  ['finish.*', 'finish *'],
] as const

/** What is asked of a part; a number stands as `*`. */
const ends: Readonly<Record<string, string>> = {
  at: 'from the nut line',
  along: 'from the box’s edge',
  off: 'off the centre line',
  'at.*': 'place * from the nut line',
  'along.*': 'place * from the box’s edge',
  'off.*': 'place * off the centre line',
  'down.*': 'place * below the top',
  'through.*': 'passes through, *',
  'woods.*': 'wood of strip *',
  from: 'start',
  to: 'end',
  on: 'where it goes on',
  in: 'which wall',
}

/** Name a key of the build file in a maker's words: `sound hole 1 diameter`, `D4 gauge`; a string is named by its note. */
export function keyInWords(path: string): string {
  const steps = path.split('.')
  const named = steps.map((step, at) => (/^\d+$/.test(step) || isName(steps, at) ? '*' : step))
  const items = steps.filter((_, at) => named[at] === '*')
  const pattern = named.join('.')
  const own = Object.hasOwn(whole, pattern) ? whole[pattern] : undefined
  if (own !== undefined) return filled(own, items)
  const part = parts.find(([key]) => pattern === key || pattern.startsWith(`${key}.`))
  const [key, name] = part ?? [named[0]!, named[0]!.replaceAll('-', ' ')]
  const rest = pattern.slice(key.length + 1)
  const end = Object.hasOwn(ends, rest) ? ends[rest]! : rest.replaceAll(/[.-]/g, ' ')
  return filled(`${name} ${end}`.trim(), items)
}

/** Strings go by their notes, lines by their labels. */
const isName = ([first]: readonly string[], at: number): boolean =>
  at === 1 && (first === 'strings' || first === 'lines' || first === 'cents')

function filled(words: string, items: readonly string[]): string {
  const left = [...items]
  return words.replaceAll('*', () => left.shift() ?? '')
}
