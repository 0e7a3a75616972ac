import type {WorkStep} from './hazards.ts'

/**
 * What each kind of step is called, and the words by which a day's heading or a task names it: whole words,
 * the start of one where `*` ends it.
 */
export interface WorkKindRow {
  name: string
  words: readonly string[]
}

// biome-ignore format: a line each, in the order of the work
export const workKinds = {
  mill: {name: 'Mill', words: ['mill*', 'stock']},
  rip: {name: 'Rip', words: ['rip*', 'strips']},
  trim: {name: 'Trim the short parts', words: ['trim the short parts', 'trimmed', 'trimming']},
  'glue-up': {name: 'Glue up', words: ['glue up', 'gluing up', 'glued up', 'laminat*']},
  plane: {name: 'Plane', words: ['plane', 'planed', 'planing', 'thickness*']},
  'saw-scarf': {name: 'Saw the scarf', words: ['scarf*']},
  'glue-head': {name: 'Glue the head', words: ['glue the head', 'gluing the head', 'head glued', 'glued the head', 'scarf glued']},
  'shape-head': {name: 'Shape the head', words: ['shape the head', 'shaping', 'head shaped', 'head shape*', 'scarf and head']},
  'slot-frets': {name: 'Saw the fret slots', words: ['slots', 'slotting', 'slotted', 'fret slots']},
  'drill-head': {name: 'Drill the head', words: ['drill the head', 'tuner holes', 'post holes', 'head drilled']},
  'drill-neck': {name: 'Drill the neck', words: ['drill the neck', 'drilling the neck', 'ferrule holes', 'neck drilled']},
  'round-over': {name: 'Round the back edges', words: ['round over', 'rounding', 'rounded', 'routing', 'routed']},
  'cut-down': {name: 'Cut the neck down', words: ['cut the neck down', 'cut down', 'cutting down', 'relieved', 'daylight']},
  'groove-nut': {name: 'Cut the nut’s groove', words: ['nut groove', 'nut’s groove', 'groove for the nut', 'groove']},
  'box-prepare': {name: 'Prepare the box', words: ['box', 'lid', 'reading the box']},
  'box-strip': {name: 'Strip the paper', words: ['strip the paper', 'paper off', 'paper stripped', 'stripping']},
  'fit-blocks': {name: 'Fit the blocks', words: ['blocks', 'block']},
  'drill-top': {name: 'Drill the top', words: ['drill the top', 'sound hole*', 'top drilled']},
  'drill-box': {name: 'Drill the box', words: ['drill the box', 'jack hole', 'box drilled']},
  'notch-box': {name: 'Let the neck in', words: ['notch*', 'letting the neck in', 'let the neck in', 'neck let in']},
  sand: {name: 'Sand', words: ['sand', 'sanded', 'sanding']},
  'mark-lines': {name: 'Mark the lines', words: ['lines', 'marking out', 'marks']},
  'burn-marks': {name: 'Burn the marks', words: ['burn*', 'burnt']},
  stain: {name: 'Stain', words: ['stain*']},
  fret: {name: 'Press the frets in', words: ['frets', 'fretting', 'fretted']},
  'fret-ends': {name: 'File the fret ends', words: ['fret ends', 'filing the ends']},
  finish: {name: 'Finish', words: ['finish', 'finishing', 'finished']},
  'cut-rod': {name: 'Cut the rod', words: ['rod', 'rods', 'cut the rod', 'bolt']},
  'fit-parts': {name: 'Fit the further parts', words: ['further parts', 'parts fitted', 'parts glued']},
  fasten: {name: 'Join neck and box', words: ['fasten*', 'screwed', 'joined', 'fitting the end', 'neck on', 'assembl*']},
  wire: {name: 'Wire the pickup', words: ['wire', 'wired', 'wiring', 'solder*', 'pickup']},
  string: {name: 'String it', words: ['string', 'strings', 'strung', 'stringing']},
  'set-up': {name: 'Set it up', words: ['set up', 'setting up', 'setup', 'measuring']},
} satisfies Record<WorkStep, WorkKindRow>

// biome-ignore format: a line each
/** Steps that are not called and not named as others of their kind, by their ids. */
const ownNames = {
  'rip-small': {name: 'Rip the short parts’ strips', words: ['short parts', 'small parts']},
  'plane-faces': {name: 'Plane the faces to be glued', words: ['faces planed', 'plane the faces', 'planed the faces', 'jointed']},
  'mark-lines-stick': {name: 'Strike the nut line', words: ['strike the nut line', 'nut line struck', 'nut line', 'centre line']},
  'mark-lines-board': {name: 'Strike the nut line on the board', words: ['nut line on the board', 'nut line on the fingerboard']},
  'mark-lines-face': {name: 'Strike the nut line again', words: ['nut line again', 'struck again']},
  'glue-up-face': {name: 'Glue the face on', words: ['face glued', 'cap', 'glue the face', 'face on']},
  'glue-up-board': {name: 'Glue the fingerboard on', words: ['fingerboard']},
  'glue-up-plate': {name: 'Glue the head’s plate on', words: ['plate']},
  'sand-board': {name: 'Round the fingerboard', words: ['radius*', 'fingerboard rounded']},
  'plane-sides': {name: 'Plane the sides', words: ['sides', 'planed to width', 'taper*']},
  'drill-neck-dots': {name: 'Set the dots in', words: ['dots', 'inlay*', 'inlaid']},
  'fasten-hardware': {name: 'Put the hardware on', words: ['hardware', 'tuners', 'ferrules']},
  'fasten-top': {name: 'Close the box', words: ['close the box', 'box closed', 'closing']},
} satisfies Record<string, WorkKindRow>

/** Give what a step is called, and how a day's heading or a task names it: by its id, or else by its kind. */
export function namesOf(id: string, kind: WorkStep): WorkKindRow {
  return (ownNames as Readonly<Record<string, WorkKindRow>>)[id] ?? workKinds[kind]
}
