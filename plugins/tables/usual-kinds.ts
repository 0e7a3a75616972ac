/**
 * The usual kinds of small instrument, to start a build from. Sizes, tunings and gauges are common practice,
 * no source. Each size is given in inches and, rounded as a maker would, in millimetres.
 */
export interface UsualKind {
  says: string
  scale: readonly [inches: string, mm: string]
  box: readonly [inches: string, mm: string]
  neck: readonly [inches: string, mm: string]
  /** Note and gauge (inches) of each string, bass side first. */
  strings: readonly (readonly [note: string, gauge: string, material?: 'nylon'])[]
  fretted: boolean
  play: 'slide' | 'fingers'
  joins: 'on top' | 'through'
  pattern?: 'diatonic'
  handed?: 'left'
}

const fiveBySeven = ['9 x 7 x 2', '230 x 180 x 50'] as const

// biome-ignore format: a line each
export const usualKinds = {
  'child': {says: 'a small three-string for a child', scale: ['17', '432'], box: ['7 1/2 x 5 1/2 x 1 3/4', '190 x 140 x 45'], neck: ['1 3/8 x 3/4', '35 x 19'], strings: [['G3', '.024w'], ['D4', '.014'], ['G4', '.011']], fretted: true, play: 'fingers', joins: 'on top'},
  'diatonic': {says: 'a diatonic three-string', scale: ['26', '660'], box: ['10 x 7 x 2', '255 x 180 x 50'], neck: ['1 1/2 x 3/4', '38 x 19'], strings: [['D3', '.024w'], ['A3', '.014'], ['D4', '.011']], fretted: true, play: 'fingers', joins: 'on top', pattern: 'diatonic'},
  'four-in-fifths': {says: 'a four-string tuned in fifths', scale: ['21', '533'], box: ['10 x 7 x 2 1/4', '255 x 180 x 57'], neck: ['1 1/2 x 13/16', '38 x 21'], strings: [['G2', '.042w'], ['D3', '.028w'], ['A3', '.017'], ['E4', '.011']], fretted: true, play: 'fingers', joins: 'on top'},
  'left-handed': {says: 'a fretted three-string for a left-handed player', scale: ['25', '635'], box: ['10 x 7 x 2', '255 x 180 x 50'], neck: ['1 1/2 x 3/4', '38 x 19'], strings: [['G2', '.042w'], ['D3', '.026w'], ['G3', '.017']], fretted: true, play: 'fingers', joins: 'on top', handed: 'left'},
  'three-string-fretted': {says: 'a fretted three-string', scale: ['25', '635'], box: ['10 x 7 x 2', '255 x 180 x 50'], neck: ['1 1/2 x 3/4', '38 x 19'], strings: [['G2', '.042w'], ['D3', '.026w'], ['G3', '.017']], fretted: true, play: 'fingers', joins: 'on top'},
  'three-string-slide': {says: 'a fretless three-string for slide', scale: ['24 1/4', '616'], box: ['10 1/8 x 7 x 2', '257 x 178 x 50'], neck: ['1 1/2 x 13/16', '38 x 21'], strings: [['D3', '.030w'], ['A3', '.020w'], ['D4', '.013']], fretted: false, play: 'slide', joins: 'on top'},
  'ukulele-concert': {says: 'a four-string of concert ukulele size, nylon', scale: ['15', '381'], box: fiveBySeven, neck: ['1 1/2 x 3/4', '38 x 19'], strings: [['G4', '.028', 'nylon'], ['C4', '.042', 'nylon'], ['E4', '.032', 'nylon'], ['A4', '.024', 'nylon']], fretted: true, play: 'fingers', joins: 'on top'},
  'ukulele-soprano': {says: 'a four-string of soprano ukulele size, nylon', scale: ['13 5/8', '346'], box: ['8 x 6 x 2', '205 x 152 x 50'], neck: ['1 1/2 x 3/4', '38 x 19'], strings: [['G4', '.030', 'nylon'], ['C4', '.044', 'nylon'], ['E4', '.036', 'nylon'], ['A4', '.028', 'nylon']], fretted: true, play: 'fingers', joins: 'on top'},
  'ukulele-tenor': {says: 'a four-string of tenor ukulele size, nylon', scale: ['17', '432'], box: ['9 1/2 x 7 x 2 1/4', '240 x 180 x 57'], neck: ['1 1/2 x 3/4', '38 x 19'], strings: [['G4', '.024', 'nylon'], ['C4', '.036', 'nylon'], ['E4', '.032', 'nylon'], ['A4', '.024', 'nylon']], fretted: true, play: 'fingers', joins: 'on top'},
} satisfies Record<string, UsualKind>

export type UsualKindName = keyof typeof usualKinds
