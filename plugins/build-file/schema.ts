import {inchMm} from '../tables/units.ts'
import {
  angle,
  capacitance,
  choice,
  date,
  density,
  either,
  flag,
  force,
  gauge,
  type Infer,
  label,
  length,
  list,
  map,
  massPerLength,
  measured,
  money,
  number,
  pitch,
  record,
  step,
  stiffness,
  text,
  wood,
} from './kinds.ts'

// Ranges are what any instrument of this kind could have, so that a slip of unit or of a point is named.

const ownWood = {
  density: density('The density of a wood that the wood table does not have.', {
    min: 50,
    max: 2000,
  }),
  stiffness: stiffness('The stiffness along the grain of a wood that the wood table does not have.', {
    min: 500,
    max: 60_000,
  }),
}

const sheet = {
  wood: wood('What it is made of.'),
  thickness: length('How thick it is.', {min: 0.3, max: 100}),
  ...ownWood,
}

const at = length('Distance from the nut line, towards the bridge.', {
  signed: true,
  max: 3000,
  min: -1000,
})
const along = length("Distance from the box's head-side edge towards its tail.", {
  signed: true,
  max: 2000,
  min: -1000,
})
const off = length('Distance off the centre line, towards the last string.', {
  signed: true,
  max: 500,
  min: -500,
})

const stockPiece = record('A piece of wood at hand.', {
  id: text('The name pencilled on the piece.'),
  wood: wood('What wood it is.'),
  length: length('How long it is.', {min: 1, max: 20_000}),
  width: length('How wide it is.', {min: 1, max: 2000}),
  thickness: length('How thick it is.', {min: 0.2, max: 300}),
  clear: list(
    length('One end of the clear length.', {max: 20_000}),
    'From where to where it is free of knots and checks, measured from one end.',
    {length: 2},
  ),
  count: number('How many alike.', {min: 1, max: 10_000, whole: true}),
  cost: money('What it cost.', {min: 0}),
  remark: text('Anything to remember about it.'),
  bought: date('The day it came into the shop.'),
  ...ownWood,
})

export const rackSchema = record('The rack: the pieces of wood at hand.', {
  pieces: list(stockPiece, 'The pieces, one a line.'),
})

const saw = record('What the saw and the planer take away.', {
  kerf: length('The width of the saw cut.', {max: 20}),
  trim: length('What is squared off at each end of a piece.', {max: 500}),
  plane: length('What is planed off each face.', {max: 20}),
})

const units = choice(['in', 'mm'], 'What a bare number means, and the unit shown first.')
const ruler = length('The finest mark that is worked to.', {
  min: 0.05,
  max: inchMm,
})

export const journalSchema = record('Settings that every build of the journal inherits.', {
  title: text("The journal's name."),
  maker: text('Who makes these instruments.'),
  currency: text('The currency of every cost, by its three letters or its sign.'),
  units,
  ruler,
  saw,
  site: text('The address where the site is published.'),
})

/** The front matter of a build file: types, checks of shape, JSON Schema and key reference all come from here. */
export const buildSchema = record('One instrument.', {
  title: text("The instrument's name; the only key that a build must have."),
  summary: text('One sentence about it, for the portfolio.'),
  status: choice(['idea', 'on the bench', 'strung up', 'retired', 'sold', 'given'], 'How far it is.'),
  play: choice(['slide', 'fingers', 'both'], 'How it is played: sets usual heights and pull.'),
  started: date('The day work began.'),
  finished: date('The day it was done.'),
  tags: list(text('A word to find it by.'), 'Words to find it by.'),
  publish: flag('Whether it appears on the published site.'),
  units,
  ruler,
  handed: choice(['right', 'left'], 'Left mirrors drawings, templates and dots; no number changes.'),
  'based-on': text('The slug of the build whose dimensions were copied.'),
  cover: text('The photograph on its card; left out, the drawing.'),
  recordings: list(
    record(
      'A recording.',
      {
        file: text('The sound file, beside the build.'),
        says: text('What is heard.'),
      },
      {short: {keys: ['file'], between: ''}},
    ),
    'Sound files, never playing by themselves.',
  ),
  accept: map(
    'rule',
    text('Why this build may break it.'),
    "Rules that this build may break, each with the reason; a rule's problems become a remark.",
  ),
  'reference-pitch': number('The frequency of A4 in hertz.', {
    min: 300,
    max: 600,
  }),

  scale: record(
    'The string length and its lines.',
    {
      length: length('Nut line to bridge line.', {min: 100, max: 2000}),
      lines: number('How many frets or marker lines.', {
        min: 0,
        max: 60,
        whole: true,
      }),
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
  ),
  frets: record('The fret wire; slot width and depth follow from it.', {
    'wire-width': length('Width of the crown.', {min: 0.5, max: 6}),
    crown: length('Height of the crown above the fingerboard.', {
      min: 0.2,
      max: 4,
    }),
    tang: length('Thickness of the tang.', {min: 0.2, max: 2}),
    'tang-depth': length('How deep the tang goes.', {min: 0.5, max: 6}),
    'saw-kerf': length('The slot that the fret saw cuts.', {
      min: 0.2,
      max: 2,
    }),
    material: text('The wire’s metal: steel or brass, for example.'),
  }),
  nut: record('What the strings cross at the head.', {
    kind: choice(['rod', 'bolt', 'flat', 'zero-fret'], 'What the strings rest on at the head end.'),
    diameter: length('Diameter of the rod or bolt.', {min: 1, max: 30}),
    groove: length('Depth of the groove it lies in.', {max: 20}),
  }),
  bridge: record('What the strings cross over the box.', {
    kind: choice(['rod', 'saddle'], 'What the strings rest on.'),
    on: choice(['neck', 'top'], 'What it stands on.'),
    'from-tail': length(
      "From the bridge line to the box's tail edge; another way to say where the box lies.",
      {max: 2000},
    ),
    height: length("From what it stands on to the string's underside, rod included.", {min: 0.5, max: 100}),
    length: length('Across the strings.', {min: 5, max: 400}),
    foot: length('Along the strings, where it stands.', {min: 1, max: 200}),
  }),
  action: record(
    "The string's height above the playing face (fretted: above the crowns); two of nut, octave and bridge height give the third.",
    {
      nut: length('At the nut.', {max: 30}),
      octave: length('At half the scale length.', {max: 40}),
      relief: length('Hollow of the neck when strung, at its deepest.', {
        signed: true,
        min: -5,
        max: 10,
      }),
      finger: length('How far behind the line the finger presses.', {
        max: 30,
      }),
    },
  ),
  strings: list(
    record(
      "A string; they are listed from the player's bass side.",
      {
        note: pitch('The pitch it is tuned to.'),
        gauge: gauge('Its diameter, with w last where it is wound.', {
          min: 0.1,
          max: 3,
        }),
        core: gauge('The diameter of the core of a wound string.', {
          min: 0.1,
          max: 3,
        }),
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
        stiffness: stiffness("Young's modulus of the whole section.", {
          min: 100,
          max: 300_000,
        }),
        course: number('How many strings run together as this course.', {
          min: 1,
          max: 3,
          whole: true,
        }),
      },
      {short: {keys: ['note', 'gauge'], between: ' '}},
    ),
    'The strings, from the player’s bass side; or how many.',
    {countable: true, most: 12},
  ),
  spacing: record('First to last string, centre to centre.', {
    nut: length('At the nut.', {min: 0, max: 200}),
    bridge: length('At the bridge.', {min: 0, max: 200}),
    slots: choice(
      ['centres', 'gaps'],
      'Whether the strings are evenly spaced by their centres or by the gaps between them.',
    ),
  }),

  neck: record(
    'The neck.',
    {
      length: length('The finished stick, head end to tail end; left out, it is computed.', {
        min: 100,
        max: 3000,
      }),
      width: record(
        'How wide it is, at the nut and at the tail.',
        {
          nut: length('At the nut line.', {min: 10, max: 200}),
          tail: length('At the tail end.', {min: 10, max: 200}),
        },
        {short: {keys: ['nut'], between: ''}},
      ),
      thickness: length('Playing face to back.', {min: 5, max: 100}),
      joins: choice(['on top', 'through', 'end'], 'How it meets the box.'),
      'above-top': length("Playing face above the box's top.", {
        signed: true,
        min: -50,
        max: 100,
      }),
      angle: angle('Tilt back.', {min: -10, max: 15}),
      wood: wood('One wood, no laminations.'),
      ...ownWood,
      laminations: list(
        record('A layer of the neck.', {
          ...sheet,
          from: length('Where it starts, from the nut line.', {
            signed: true,
            min: -500,
            max: 2000,
          }),
          to: length('Where it ends, from the nut line.', {
            signed: true,
            min: -500,
            max: 3000,
          }),
          strips: number('Glued up from this many strips side by side.', {
            min: 1,
            max: 20,
            whole: true,
          }),
          woods: list(
            wood('One strip’s wood.'),
            'The woods of its strips, bass side first, where they differ.',
            {most: 20},
          ),
          glued: choice(
            ['before scarf', 'after scarf'],
            'Whether it is glued on before or after the scarf is sawn.',
          ),
        }),
        'The layers, from the playing face down.',
        {most: 20},
      ),
      cap: record('A thin layer glued over the playing face.', sheet, {
        none: true,
      }),
      'round-over': record(
        'The rounded back edges.',
        {
          radius: length('Radius of the cutter.', {min: 0.5, max: 60}),
          from: either(choice(['scarf', 'nut', 'box'], 'A place by name.'), at, 'Where it starts.'),
          to: either(choice(['scarf', 'nut', 'box'], 'A place by name.'), at, 'Where it stops.'),
        },
        {short: {keys: ['radius'], between: ''}, none: true},
      ),
      glue: text('What it is glued with.'),
    },
    {short: {keys: ['width', 'thickness'], between: ' x '}},
  ),
  head: record('The head.', {
    length: length('From the nut line to the head end.', {min: 20, max: 600}),
    thickness: length('Face to back.', {min: 3, max: 60}),
    joint: choice(['scarf', 'solid', 'straight'], 'How the head leans back, or that it does not.'),
    angle: angle('How far it leans back.', {min: 0, max: 45}),
    ledge: length('Flat behind the nut line before the slope starts.', {
      max: 100,
    }),
    drop: length("How far a straight head's face is cut down.", {max: 60}),
    retainer: choice(['bar', 'screw'], 'What holds the strings down behind the nut.'),
    plate: record('A plate glued on its face.', sheet, {none: true}),
  }),
  fingerboard: record(
    'A fingerboard glued on the neck.',
    {
      ...sheet,
      from: at,
      to: length('Where it ends, from the nut line.', {
        signed: true,
        min: 0,
        max: 3000,
      }),
      radius: length('Radius of its face across the strings; left out, flat.', {
        min: 50,
        max: 5000,
      }),
    },
    {none: true},
  ),

  box: record(
    'The box; all measures are outside, top and back included.',
    {
      wood: wood('What it is made of.'),
      length: length('Outside, along the neck.', {min: 40, max: 1500}),
      width: length('Outside, across the neck.', {min: 40, max: 1500}),
      depth: length('Outside, top and back included.', {min: 10, max: 600}),
      sides: length('Thickness of the sides and ends.', {min: 0.3, max: 60}),
      top: record(
        'The face under the strings.',
        {
          thickness: length('How thick it is.', {min: 0.3, max: 60}),
          wood: wood('What it is made of, where it differs from the box.'),
          held: choice(['glued', 'screwed', 'hinged'], 'How it is held.'),
          paper: choice(['keep', 'strip', 'none'], 'What becomes of the paper on it.'),
        },
        {short: {keys: ['thickness'], between: ''}},
      ),
      back: length('Thickness of the back.', {min: 0.3, max: 60}),
      at: length('Its head-side edge, from the nut line.', {
        min: -200,
        max: 2500,
        signed: true,
      }),
      holes: list(
        record('A sound hole.', {
          diameter: length('Its diameter.', {min: 1, max: 300}),
          at,
          along,
          off,
        }),
        'The sound holes in the top.',
        {most: 200},
      ),
      blocks: list(
        record('A block glued inside to take screws; grain along the longer side.', {
          wood: wood('What it is made of.'),
          at,
          along,
          off,
          length: length('Along the neck.', {min: 2, max: 1000}),
          width: length('Across the neck.', {min: 2, max: 1000}),
          thickness: length('How thick it is.', {min: 1, max: 200}),
          glued: choice(['under the top', 'on the sides', 'at the ends'], 'Where it is glued.'),
        }),
        'Blocks glued inside to take screws.',
        {most: 40},
      ),
      notch: record(
        'Where the neck is let into the box.',
        {
          width: length('Across the neck.', {min: 2, max: 300}),
          depth: length("Down from the box's edge.", {min: 0.5, max: 200}),
        },
        {short: {keys: ['width', 'depth'], between: ' x '}, none: true},
      ),
      'neck-gap': length('Daylight between a neck that runs through and the top.', {max: 60}),
    },
    {short: {keys: ['length', 'width', 'depth'], between: ' x '}},
  ),

  tuners: record('The tuners; at[i] and off[i] belong to string i.', {
    side: choice(['bass', 'treble', 'both'], 'On which side of the head they stand.'),
    'post-hole': length('Diameter of the post hole.', {min: 2, max: 30}),
    button: length('How far the button reaches across.', {min: 3, max: 60}),
    'string-height': length("Where the string meets the post, above the head's face.", {max: 60}),
    at: list(at, 'Each post’s place along the head, string by string.', {
      most: 12,
    }),
    off: list(off, 'Each post’s distance off the centre line, string by string.', {most: 12}),
    ratio: number('Turns of the button for one turn of the post.', {
      min: 1,
      max: 60,
    }),
  }),
  anchors: record('What holds the strings at the tail.', {
    kind: choice(['ferrule', 'tailpiece', 'pins', 'plain'], 'What holds each string.'),
    at,
    along,
    spacing: length('Between neighbours.', {max: 100}),
    body: length("Diameter of the ferrule's body or the pin.", {
      min: 1,
      max: 30,
    }),
    'string-hole': length('Diameter of the hole for the string.', {
      min: 0.3,
      max: 20,
    }),
    height: length('Where the string leaves it, above the playing face.', {
      signed: true,
      min: -100,
      max: 100,
    }),
  }),
  screws: list(
    record('Screws of one kind; every at is combined with every off.', {
      size: number('The screw’s gauge number.', {
        min: 0,
        max: 24,
        whole: true,
      }),
      length: length('Its length, under the head for a round head, over all for a flat one.', {
        min: 3,
        max: 200,
      }),
      at: list(at, 'Distances from the nut line.', {most: 100}),
      along: list(along, "Distances from the box's head-side edge.", {
        most: 100,
      }),
      off: list(off, 'Distances off the centre line.', {most: 100}),
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
  ),
  pickup: record(
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
  ),
  finish: list(
    record(
      'A finish, in the order it goes on.',
      {
        kind: text('What it is: oil, shellac, stain, lacquer, varnish, wax, paint.'),
        coats: number('How many coats.', {min: 1, max: 40, whole: true}),
        on: text('What it goes on, where not on everything.'),
      },
      {short: {keys: ['kind'], between: ''}},
    ),
    'The finishes, in the order they go on.',
  ),
  markings: record('How lines and dots are made.', {
    lines: text('How the lines are made: burnt, pencil, ink, inlaid, scribed, painted.'),
    dots: text('How the dots are made: burnt, inlaid, drilled, painted.'),
  }),
  extras: list(text('Something extra.'), 'What else goes on it: strap buttons, a lamp ring, feet.'),

  parts: list(
    record('A piece beyond what the design itself implies, sized as it is cut.', {
      name: text('What it is for.'),
      wood: wood('Its wood, or any.'),
      length: length('How long.', {min: 0.5, max: 20_000}),
      width: length('How wide.', {min: 0.5, max: 2000}),
      thickness: length('How thick.', {min: 0.2, max: 300}),
      count: number('How many.', {min: 1, max: 10_000, whole: true}),
    }),
    'More pieces than the design itself implies, sized as they are cut.',
    {most: 10_000},
  ),
  stock: list(stockPiece, 'Pieces of wood for this build.', {most: 10_000}),
  take: list(text('The name of a piece on the rack.'), 'Pieces that this build takes from the rack.'),
  saw,
  cost: list(
    record('Something paid for.', {
      item: text('What it is.'),
      count: number('How many.', {min: 0, max: 100_000}),
      each: money('What one costs.', {min: 0}),
    }),
    'What was paid for.',
  ),
  price: money('What it was sold for, or would be.', {min: 0}),
  cautions: list(text('A caution of your own.'), 'Cautions beyond those that the tool finds.'),
  humidity: list(
    number('Relative humidity in per cent.', {min: 0, max: 100}),
    'The air that it will live in: the driest and the dampest, in per cent.',
    {length: 2},
  ),
  tolerances: map(
    'path',
    either(length('How far off it may be.'), angle('How far off it may be.'), 'How far off it may be.'),
    'How far a measure may be off, by its path.',
  ),

  measured: measured('As built: any length or angle of this front matter, by its path.'),
  played: list(
    record('What it was like to play.', {
      on: date('The day it was played.'),
      again: choice(['yes', 'with changes', 'no'], 'Whether you would build it again.'),
      scores: map(
        'score',
        number('From 1 to 5.', {min: 1, max: 5}),
        'Scores from 1 to 5: action, buzz, intonation, loudness, or your own words.',
      ),
      remark: text('What was noticed.'),
    }),
    'Notes from playing it.',
  ),
})

/** The values of a build's front matter, every key optional. */
export type BuildValues = Infer<typeof buildSchema>
export type JournalSettings = Infer<typeof journalSchema>
export type StockPiece = Infer<typeof stockPiece>
