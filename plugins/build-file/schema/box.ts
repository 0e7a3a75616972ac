import {choice, length, list, record, wood} from './kinds.ts'
import {along, at, off} from './places.ts'

export const box = record(
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
    at: length('Its head-side edge, from the nut line.', {min: -200, max: 2500, signed: true}),
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
    'end-block': record(
      'The block inside the head end, behind a neck that joins there, right under the top.',
      {
        wood: wood('What it is made of.'),
        length: length('Along the neck.', {min: 2, max: 300}),
        width: length('Across the neck.', {min: 2, max: 1000}),
        thickness: length('From under the top down.', {min: 1, max: 300}),
      },
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
)
