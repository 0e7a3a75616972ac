import {angle, choice, either, length, list, number, record, text, wood} from './kinds.ts'
import {at} from './places.ts'
import {ownWood, sheet} from './wood.ts'

export const neck = record(
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
    inside: length('How thick it is inside the box, where it runs through and is cut down under the top.', {
      min: 1,
      max: 100,
    }),
    'above-top': length("Playing face above the box's top.", {signed: true, min: -50, max: 100}),
    angle: angle('Tilt back.', {min: -10, max: 15}),
    wood: wood('One wood, no laminations.'),
    ...ownWood,
    laminations: list(
      record('A layer of the neck.', {
        ...sheet,
        from: length('Where it starts, from the nut line.', {signed: true, min: -500, max: 2000}),
        to: length('Where it ends, from the nut line.', {signed: true, min: -500, max: 3000}),
        strips: number('Glued up from this many strips side by side.', {min: 1, max: 20, whole: true}),
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
    cap: record('A thin layer glued over the playing face.', sheet, {none: true}),
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
  {short: {keys: ['width', 'thickness'], between: ' x ', isFalling: true}},
)

// A plate only weighs: it stiffens nothing that bends.
const {stiffness: _, ...plate} = sheet

export const head = record('The head.', {
  length: length('From the nut line to the head end.', {min: 20, max: 600}),
  thickness: length('Face to back.', {min: 3, max: 60}),
  joint: choice(['scarf', 'solid', 'straight'], 'How the head leans back, or that it does not.'),
  angle: angle('How far it leans back.', {min: 0, max: 45}),
  ledge: length('Flat behind the nut line before the slope starts.', {max: 100}),
  drop: length("How far a straight head's face is cut down.", {max: 60}),
  retainer: choice(['bar', 'screw'], 'What holds the strings down behind the nut.'),
  plate: record('A plate glued on its face.', plate, {none: true}),
})

export const fingerboard = record(
  'A fingerboard glued on the neck.',
  {
    ...sheet,
    from: at,
    to: length('Where it ends, from the nut line.', {signed: true, min: 0, max: 3000}),
    radius: length('Radius of its face across the strings; left out, flat.', {min: 10, max: 5000}),
  },
  {none: true},
)
