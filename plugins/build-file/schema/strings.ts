import {
  choice,
  either,
  flag,
  force,
  gauge,
  label,
  length,
  list,
  massPerLength,
  number,
  pitch,
  record,
  step,
  stiffness,
  text,
} from './kinds.ts'

export const scale = record(
  'The string length and its lines.',
  {
    length: length('Nut line to bridge line.', {min: 100, max: 2000}),
    lines: number('How many frets or marker lines.', {min: 0, max: 60, whole: true}),
    fretted: flag('Wire in slots (true) or marks only (false).'),
    pattern: either(
      choice(['chromatic', 'diatonic'], 'A usual pattern.'),
      list(
        number('Semitones above the open string.', {min: 0.01, max: 60}),
        'The lines, in semitones above the open string, rising; one that stops at 12 repeats by the octave.',
        {most: 60},
      ),
      'Which lines there are: chromatic, diatonic, or a list of semitones above the open string.',
    ),
    temperament: either(
      choice(['equal'], 'Twelve equal semitones.'),
      list(
        step('A step: cents, or a ratio with / or :.'),
        "One octave's twelve steps above the open string, as cents or ratios; the twelfth is the octave.",
        {length: 12},
      ),
      'How the octave is divided: equal, or twelve steps as cents or ratios.',
    ),
    dots: list(label('The line that the dot marks.'), 'The lines that carry a dot on the player’s edge.'),
  },
  {short: {keys: ['length'], between: ''}},
)

export const frets = record('The fret wire; slot width and depth follow from it.', {
  'wire-width': length('Width of the crown.', {min: 0.5, max: 6}),
  crown: length('Height of the crown above the fingerboard.', {min: 0.2, max: 4}),
  tang: length('Thickness of the tang.', {min: 0.2, max: 2}),
  'tang-depth': length('How deep the tang goes.', {min: 0.5, max: 6}),
  'saw-kerf': length('The slot that the fret saw cuts.', {min: 0.2, max: 2}),
  material: text('The wire’s metal: steel or brass, for example.'),
})

export const nut = record('What the strings cross at the head.', {
  kind: choice(['rod', 'bolt', 'flat', 'zero-fret'], 'What the strings rest on at the head end.'),
  diameter: length('Diameter of the rod or bolt.', {min: 1, max: 30}),
  groove: length('Depth of the groove it lies in.', {max: 20}),
})

export const bridge = record('What the strings cross over the box.', {
  kind: choice(['rod', 'saddle'], 'What the strings rest on.'),
  on: choice(['neck', 'top'], 'What it stands on.'),
  'from-tail': length("From the bridge line to the box's tail edge; another way to say where the box lies.", {
    max: 2000,
  }),
  height: length("From what it stands on to the string's underside, rod included.", {min: 0.5, max: 100}),
  length: length('Across the strings.', {min: 5, max: 400}),
  foot: length('Along the strings, where it stands.', {min: 1, max: 200}),
})

export const action = record(
  "The string's height above the playing face (fretted: above the crowns); two of nut, octave and bridge height give the third.",
  {
    nut: length('At the nut.', {max: 30}),
    octave: length('At half the scale length.', {max: 40}),
    relief: length('Hollow of the neck when strung, at its deepest.', {signed: true, min: -5, max: 10}),
    finger: length('How far behind the line the finger presses.', {max: 30}),
  },
)

export const strings = list(
  record(
    "A string; they are listed from the player's bass side.",
    {
      note: pitch('The pitch it is tuned to.'),
      gauge: gauge('Its diameter, with w last where it is wound.', {min: 0.1, max: 3}),
      core: gauge('The diameter of the core of a wound string.', {min: 0.1, max: 3}),
      wrap: choice(
        [
          'nickel-plated steel',
          'pure nickel',
          'stainless steel',
          'phosphor bronze',
          '80/20 bronze',
          'silver-plated copper',
        ],
        'What a wound string is wound with.',
      ),
      material: choice(
        ['steel', 'nylon', 'fluorocarbon', 'gut', 'phosphor bronze', 'brass'],
        'What a plain string is made of.',
      ),
      ends: choice(['ball', 'loop', 'plain'], 'How its tail end is made.'),
      mass: massPerLength('Mass per length, as the packet says; wins over the model.', {
        min: 1e-5,
        max: 0.1,
      }),
      tension: record(
        'The pull that the packet prints, at the scale and note it prints; wins over the model.',
        {
          pull: force('The pull.', {min: 1, max: 2000}),
          scale: length('At this scale length.', {min: 100, max: 2000}),
          note: pitch('At this pitch.'),
        },
      ),
      stiffness: stiffness("Young's modulus of the whole section.", {min: 100, max: 300_000}),
      course: number('How many strings run together as this course.', {min: 1, max: 3, whole: true}),
    },
    {short: {keys: ['note', 'gauge'], between: ' '}},
  ),
  'The strings, from the player’s bass side; or how many.',
  {countable: true, most: 12},
)

export const spacing = record('First to last string, centre to centre.', {
  nut: length('At the nut.', {min: 0, max: 200}),
  bridge: length('At the bridge.', {min: 0, max: 200}),
  slots: choice(
    ['centres', 'gaps'],
    'Whether the strings are evenly spaced by their centres or by the gaps between them.',
  ),
})
