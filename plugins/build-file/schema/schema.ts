import {inchMm} from '../../tables/units.ts'
import {box} from './box.ts'
import {anchors, pickup, screws, tuners} from './hardware.ts'
import {
  angle,
  choice,
  date,
  duration,
  either,
  flag,
  type Infer,
  length,
  list,
  map,
  measured,
  money,
  number,
  record,
  text,
} from './kinds.ts'
import {fingerboard, head, neck} from './neck.ts'
import {action, bridge, frets, nut, scale, spacing, strings} from './strings.ts'
import {parts, saw, stockPiece} from './wood.ts'

// Ranges are what any instrument of this kind could have, so that a slip of unit or of a point is named.

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
  day: duration('How long a day at the bench is: the work is proposed in such days.', {min: 15, max: 1440}),
  rate: money('What an hour at the bench counts for: the work is set beside what was paid and the price.', {
    min: 0,
  }),
  'show-money': flag(
    'Whether the published site tells what was paid and what hours come to; left out, it tells the price alone, of what is for sale.',
  ),
  site: text('The address where the site is published.'),
  ask: text('How to ask for an instrument that is for sale: an address, or a sentence.'),
})

/** What is said of an instrument that exists and can be played. */
const made = ['strung up', 'retired', 'sold', 'given'] as const

/** Tell by its status whether an instrument exists: it is past its work. */
export const isMade = (status: string | undefined): boolean => made.some((one) => one === status)

/** The front matter of a build file: types, checks of shape, JSON Schema and key reference all come from here. */
export const buildSchema = record('One instrument.', {
  title: text("The instrument's name; the only key that a build must have."),
  summary: text('One sentence about it, for the portfolio.'),
  status: choice(['idea', 'on the bench', ...made], 'How far it is.'),
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
  'reference-pitch': number('The frequency of A4 in hertz.', {min: 300, max: 600}),

  scale,
  frets,
  nut,
  bridge,
  action,
  strings,
  spacing,

  neck,
  head,
  fingerboard,

  box,

  tuners,
  anchors,
  screws,
  pickup,
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
    {most: 40},
  ),
  markings: record('How lines and dots are made.', {
    lines: text('How the lines are made: burnt, pencil, ink, inlaid, scribed, painted.'),
    dots: text('How the dots are made: burnt, inlaid, drilled, painted.'),
  }),
  extras: list(text('Something extra.'), 'What else goes on it: strap buttons, a lamp ring, feet.'),

  parts,
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
  price: money('What it was sold for, or would be; published where it is for sale alone.', {min: 0}),
  'for-sale': flag('Whether it is for sale: its page shows the price, and how to ask.'),
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

  measured: measured(
    'As built: any length or angle of this front matter, by its path; or a list of such, each with the day it was measured under on, of which the last day counts.',
  ),
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
    {most: 100},
  ),
})

/** The values of a build's front matter, every key optional. */
export type BuildValues = Infer<typeof buildSchema>
export type JournalSettings = Infer<typeof journalSchema>
