import {
  date,
  density,
  type Infer,
  length,
  list,
  money,
  number,
  record,
  stiffness,
  text,
  wood,
} from './kinds.ts'

export const ownWood = {
  density: density('The density of a wood that the wood table does not have.', {min: 50, max: 2000}),
  stiffness: stiffness('The stiffness along the grain of a wood that the wood table does not have.', {
    min: 500,
    max: 60_000,
  }),
}

export const sheet = {
  wood: wood('What it is made of.'),
  thickness: length('How thick it is.', {min: 0.3, max: 100}),
  ...ownWood,
}

const piece = {
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
  cost: money('What it cost; of several alike, what one cost.', {min: 0}),
  remark: text('Anything to remember about it.'),
  bought: date('The day it came into the shop.'),
  ...ownWood,
}

export const stockPiece = record('A piece of wood at hand.', piece)

const rackPiece = record('A piece of wood at hand, or hardware and strings.', {
  ...piece,
  item: text('What it is, where it is no wood: tuners, a set of strings.'),
})

export const rackSchema = record('The rack: what is at hand.', {
  pieces: list(rackPiece, 'The pieces, one a line.', {most: 10_000}),
})

export const saw = record('What the saw and the planer take away.', {
  kerf: length('The width of the saw cut.', {max: 20}),
  trim: length('What is squared off at each end of a piece.', {max: 500}),
  plane: length('What is planed off each face.', {max: 20}),
})

export const parts = list(
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
)

/** What stands on the rack, as read. */
export type RackEntry = Infer<typeof rackPiece>
