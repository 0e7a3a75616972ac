import type {HazardName} from './hazards.ts'

/** Each caution as short as it may stand beside its step: a name, and what to do. The caution itself says the rest. */
export interface CautionSign {
  name: string
  does: string
}

// biome-ignore format: a line each, sorted as the hazards are
export const cautionSigns = {
  'mains-power': {name: 'mains', does: 'battery only; else a licensed electrician'},
  'saw-kickback': {name: 'kickback', does: 'guard on, push sticks, stand aside'},
  'short-part': {name: 'short parts', does: 'cut last, off a long strip; hands 3 in off'},
  'scarf-saw': {name: 'slanted stick', does: 'clamp it in a carrier'},
  'router-direction': {name: 'router', does: 'against the turn; clamp; small bites'},
  rods: {name: 'rods', does: 'vice and hacksaw; file the ends'},
  'big-bit': {name: 'big bit', does: 'clamp flat on a board; slow'},
  'string-eyes': {name: 'whip', does: 'eyes covered; slacken before cutting'},
  'lead-paint': {name: 'lead', does: 'test; wet work; no dry sanding, no heat'},
  'oil-rags': {name: 'rags', does: 'hang singly outdoors; never in a heap'},
  solvents: {name: 'vapour', does: 'draught; no flame'},
  'lacquer-mist': {name: 'mist', does: 'brush; spray outdoors with a respirator'},
  'burn-marks': {name: 'hot pen', does: 'bare wood; draught; metal stand'},
  'redcedar-dust': {name: 'redcedar', does: 'extraction and mask; stop at a tight chest'},
  'rosewood-dust': {name: 'rosewood', does: 'mask, sleeves; wash at once'},
  'cancer-dust': {name: 'fine dust', does: 'extraction and mask'},
  'sensitizer-dust': {name: 'allergy', does: 'mask and sleeves; stop at a rash'},
  'wood-dust': {name: 'dust', does: 'extraction or outdoors; mask'},
  'sheet-dust': {name: 'board dust', does: 'draught and mask'},
  'box-residue': {name: 'old box', does: 'wipe damp; pull nails; magnet'},
  planer: {name: 'thin in planer', does: 'carrier board; 1/32 in a pass'},
  'drill-clamp': {name: 'spin', does: 'clamp it; backing board'},
  'glue-epoxy': {name: 'epoxy', does: 'nitrile gloves; no green sanding'},
  'glue-ca': {name: 'quick glue', does: 'eyes covered; no cotton'},
  'glue-pu': {name: 'PU glue', does: 'gloves and draught'},
  'glue-hide': {name: 'hot glue', does: 'pot steady at 60 °C'},
  chisel: {name: 'chisel', does: 'clamp; both hands behind the edge'},
  'fret-wire': {name: 'wire ends', does: 'eyes covered; a rag over the end'},
  'fret-ends': {name: 'sharp ends', does: 'keep hands off until filed'},
  eyes: {name: 'eyes', does: 'side shields on'},
  noise: {name: 'ears', does: 'protectors on'},
  solder: {name: 'solder', does: 'draught; head out of the smoke; wash'},
  battery: {name: 'battery', does: 'no loose wires; lid screwed'},
  'small-player': {name: 'small hands', does: 'round every end; screw parts down'},
  'protected-wood': {name: 'protected wood', does: 'keep a note of where it came from'},
} satisfies Record<HazardName, CautionSign>
