import {capacitance, choice, length, list, number, record, text} from './kinds.ts'
import {along, at, off} from './places.ts'

export const tuners = record('The tuners; at[i] and off[i] belong to string i.', {
  side: choice(['bass', 'treble', 'both'], 'On which side of the head they stand.'),
  'post-hole': length('Diameter of the post hole.', {min: 2, max: 30}),
  button: length('How far the button reaches across.', {min: 3, max: 60}),
  'string-height': length("Where the string meets the post, above the head's face.", {max: 60}),
  at: list(at, 'Each post’s place along the head, string by string.', {most: 12}),
  off: list(off, 'Each post’s distance off the centre line, string by string.', {most: 12}),
  ratio: number('Turns of the button for one turn of the post.', {min: 1, max: 60}),
})

export const anchors = record('What holds the strings at the tail.', {
  kind: choice(['ferrule', 'tailpiece', 'pins', 'plain'], 'What holds each string.'),
  at,
  along,
  spacing: length('Between neighbours.', {max: 100}),
  body: length("Diameter of the ferrule's body or the pin.", {min: 1, max: 30}),
  'string-hole': length('Diameter of the hole for the string.', {min: 0.3, max: 20}),
  height: length('Where the string leaves it, above the playing face.', {
    signed: true,
    min: -100,
    max: 100,
  }),
})

export const screws = list(
  record('Screws of one kind; every at is combined with every off and every down.', {
    size: number('The screw’s gauge number.', {min: 0, max: 24, whole: true}),
    length: length('Its length, under the head for a round head, over all for a flat one.', {
      min: 3,
      max: 200,
    }),
    thread: length('How much of its length, from the tip on, is thread.', {min: 1, max: 200}),
    at: list(at, 'Distances from the nut line.', {most: 100}),
    along: list(along, "Distances from the box's head-side edge.", {most: 100}),
    off: list(off, 'Distances off the centre line.', {most: 100}),
    down: list(
      length('Below the box’s top.', {max: 600}),
      'Distances below the box’s top, of screws through its end.',
      {most: 20},
    ),
    through: list(
      text('What it passes through.'),
      'What it passes through, from the head of the screw on: block, top, washer, side, back, neck, bracket.',
      {most: 10},
    ),
    into: text('What its thread holds in: neck, block, side, top, heel.'),
    head: choice(['flat', 'round'], 'The shape of its head.'),
  }),
  'The screws.',
  {most: 100},
)

export const pickup = record(
  'The pickup and its jack.',
  {
    kind: choice(['piezo', 'magnetic', 'microphone'], 'What kind it is.'),
    diameter: length('Diameter of a disc.', {min: 2, max: 120}),
    thickness: length('How thick it is.', {min: 0.1, max: 60}),
    capacitance: capacitance('Its capacitance.', {min: 0.01, max: 10_000}),
    under: text('What it sits under.'),
    at,
    along,
    off,
    jack: record('The jack.', {
      hole: length('Diameter of its hole.', {min: 2, max: 40}),
      thread: length('How long its thread is.', {min: 1, max: 60}),
      in: choice(['side', 'end', 'side bass', 'side treble'], 'Which wall it stands in.'),
      body: length('How far it reaches into the box, behind the wall’s outer face.', {min: 2, max: 120}),
      at,
      along,
      off,
    }),
  },
  {short: {keys: ['kind'], between: ''}, none: true},
)
