/** The steps of work that a caution can stand beside. */
export type WorkStep =
  | 'mill'
  | 'rip'
  | 'trim'
  | 'glue-up'
  | 'plane'
  | 'saw-scarf'
  | 'glue-head'
  | 'shape-head'
  | 'round-over'
  | 'cut-down'
  | 'groove-nut'
  | 'slot-frets'
  | 'fret'
  | 'fret-ends'
  | 'drill-head'
  | 'drill-neck'
  | 'mark-lines'
  | 'burn-marks'
  | 'box-prepare'
  | 'box-strip'
  | 'fit-blocks'
  | 'drill-top'
  | 'drill-box'
  | 'notch-box'
  | 'sand'
  | 'stain'
  | 'finish'
  | 'fit-parts'
  | 'fasten'
  | 'wire'
  | 'string'
  | 'set-up'
  | 'cut-rod'

/**
 * What can happen at the bench and what to do about it. `steps` are those that the caution belongs beside.
 * Rules bind employers in their own country; they stand here as the best public statement of good practice.
 */
export interface HazardRow {
  hazard: string
  does: string
  /** A published source, or common practice. */
  source: string
  steps: readonly WorkStep[]
}

// biome-ignore format: a line each, the worst first, which is the order that pages show them in
export const hazards = {
  'mains-power': {hazard: 'Mains voltage, and what a valve amplifier holds after it is switched off, can kill.', does: 'Stop at a battery, or at a ready-made supply that is certified. Anything on the mains belongs to a licensed electrician.', source: '29 CFR 1926.403(i)(2): live parts at 50 volts or more are guarded against contact', steps: ['wire']},
  'saw-kickback': {hazard: 'A saw can throw the stick back, and pull a hand with it.', does: 'Guard and riving knife on, fence parallel, push sticks at hand, and stand out of line with the blade. Saw nothing twisted or loose-knotted.', source: '29 CFR 1910.213(c)(1) to (3) and (s)(9); 29 CFR 1926.304(i)(1)', steps: ['mill', 'rip']},
  'short-part': {hazard: 'A short piece tips or jams, and fingers come to the blade.', does: 'Cut it last, off a strip at least 12 in long, or by hand. Hold it in a jig or with a push stick, hands 3 in or more from the blade.', source: 'ILO code of practice, safety in the use of machinery, 14.1.10 (push sticks); the 12 in and the 3 in: common practice, no source', steps: ['rip', 'trim']},
  'scarf-saw': {hazard: 'A stick held at a slant creeps, twists and catches in the blade.', does: 'Clamp it in a carrier that slides with the saw table, hands on the carrier; or saw it by hand and plane to the line.', source: 'Cal. Code Regs. title 8 §4296(a): combs or jigs where the guard cannot be used; the carrier: common practice, no source', steps: ['saw-scarf']},
  'router-direction': {hazard: 'Fed with the cutter’s turn, a router runs away and throws the work.', does: 'Feed against the turn: by hand, counter-clockwise round an outside edge; on a table, right to left. Clamp the work, take small bites, and start from a pin or a stop.', source: 'OSHA 3157, A Guide for Protecting Workers from Woodworking Hazards (1999), routers; the directions: common practice, no source', steps: ['round-over']},
  rods: {hazard: 'A rod that spins or a cut end that flies off takes skin and eyes; the cut edge is sharp.', does: 'Clamp it in a vice between soft jaws, cut with a hacksaw and never in the fingers, and file both ends round. Eye protection on.', source: '29 CFR 1910.133(a)(1) for the eyes; the rest: common practice, no source', steps: ['cut-rod']},
  'big-bit': {hazard: 'A big bit breaks out of thin wood, catches and spins the whole lid.', does: 'Clamp the lid flat on a backing board, small hole first, slow turns, and finish from the other side.', source: 'common practice, no source', steps: ['drill-top']},
  'string-eyes': {hazard: 'A string under tension that breaks or slips whips at face and hands.', does: 'Eye protection on while tuning up and cutting. Keep the face out of its line, and slacken before you cut.', source: 'common practice, no source; the nearest found: a case report of an eye pierced by a sprung wire (Digital Journal of Ophthalmology)', steps: ['string', 'set-up']},
  'lead-paint': {hazard: 'Old paint, varnish and printed paper may hold lead; its dust and smoke poison, children most.', does: 'Test it, or treat any coat from before 1978 as leaded: no dry sanding, no hot pen, no heat gun. Wet work, wipe up, wash hands, and keep children away.', source: 'EPA 747-K-97-001, Reducing Lead Hazards When Remodeling Your Home (1997); 16 CFR 1303, from memory', steps: ['box-prepare', 'box-strip', 'drill-top', 'drill-box', 'notch-box', 'sand']},
  'oil-rags': {hazard: 'Rags wet with drying oil heat up by themselves and can catch fire within hours.', does: 'Hang them one by one outdoors until hard, or under water in a lidded metal can. Never in a heap, never in the bin.', source: '29 CFR 1926.252(e) and 1910.106(e)(9)(iii), from memory: covered metal receptacles', steps: ['finish', 'stain']},
  solvents: {hazard: 'Solvent vapour catches fire from a pilot light or a spark, and dulls the head.', does: 'Open air or a strong draught, no flame and no pilot light, lids on. Gloves, and the label’s own rules.', source: '29 CFR 1910.106, from memory', steps: ['finish', 'stain']},
  'lacquer-mist': {hazard: 'Sprayed finish fills the air with a mist that burns and that lungs cannot clear.', does: 'Brush or wipe it; spray only outdoors or in a booth, with a respirator for organic vapour.', source: '29 CFR 1910.107, from memory', steps: ['finish']},
  'burn-marks': {hazard: 'A hot pen makes smoke that is bad to breathe, and worse from anything but bare wood; it burns skin and benches.', does: 'Burn bare, untreated wood only, before any stain or finish, with a draught and your face out of the smoke. Metal stand, never left alone. Never by high voltage.', source: 'common practice, no source', steps: ['burn-marks']},
  'redcedar-dust': {hazard: 'Redcedar dust brings on asthma in 4 to 13.5 of every hundred who work in it.', does: 'Dust extraction at the tool and a well-fitting mask, sand outdoors, damp wipe after. Stop at the first tight chest.', source: 'Chan-Yeung, American Journal of Industrial Medicine 25 (1994) 13-18; ACGIH limit 0.5 mg/m³ by way of OSHA, Wood Dust', steps: ['mill', 'rip', 'plane', 'sand', 'drill-box', 'drill-top', 'notch-box']},
  'rosewood-dust': {hazard: 'The dust of rosewood and its kin is among the strongest to set off rashes of the skin.', does: 'Mask, long sleeves and barrier cream; wash at once, and no sanding with bare arms.', source: 'HSE WIS30 (Rev 1), Toxic Woods; Woods and Calnan, Toxic Woods (1976), by way of a woodturning chart of 1990', steps: ['mill', 'rip', 'plane', 'saw-scarf', 'slot-frets', 'shape-head', 'round-over', 'cut-down', 'sand']},
  'cancer-dust': {hazard: 'Fine dust of this wood is known or suspected to cause cancer of the nose after years.', does: 'Extraction at the tool, a mask while sanding, and no sweeping dry.', source: 'IARC Monographs 62 (1995) and 100C (2012), wood dust, group 1; ACGIH by way of OSHA, Wood Dust', steps: ['mill', 'rip', 'plane', 'sand']},
  'sensitizer-dust': {hazard: 'The dust of this wood irritates, or makes some people allergic for life.', does: 'Mask and long sleeves, wash after; stop at the first rash, sneezing or tight chest.', source: 'HSE WIS30, Toxic Woods, from memory; Woods and Calnan, Toxic Woods (1976), by way of a woodturning chart of 1990', steps: ['mill', 'rip', 'plane', 'sand']},
  'wood-dust': {hazard: 'Dust of any wood harms nose and lungs, and a wood that no list has may still do so.', does: 'Extraction or outdoors, and a mask whenever it hangs in the air; the advised limit is 1 mg/m³.', source: 'NIOSH Pocket Guide, wood dust (npgd0667); IARC Monographs 100C (2012)', steps: ['mill', 'rip', 'plane', 'sand']},
  'sheet-dust': {hazard: 'Dust of plywood and board holds glue as well as wood; formaldehyde comes off when it is cut or burnt.', does: 'Cut it with a draught and a mask, and never burn marks on it.', source: '40 CFR 770 for formaldehyde in composite wood, from memory; dust: NIOSH Pocket Guide, wood dust', steps: ['drill-top', 'drill-box', 'notch-box', 'sand']},
  'box-residue': {hazard: 'A box that held something else may still hold it, and nails in it break cutters and fly.', does: 'Find out what it held, smell it and wipe it out damp. Pull every nail and staple, go over it with a magnet, and test any old coat before sanding.', source: 'common practice, no source', steps: ['box-prepare', 'box-strip']},
  planer: {hazard: 'A thin or short piece breaks up in a planer or jointer, and comes out as splinters.', does: 'Carry it on a board, keep it longer than the rollers are apart, and take 1/32 in a pass. By hand below 14 in.', source: '29 CFR 1910.213(j) and (n), from memory: heads and rolls guarded; the lengths: common practice, no source', steps: ['mill', 'rip', 'plane']},
  'drill-clamp': {hazard: 'A piece that is held by hand climbs the bit and spins.', does: 'Clamp it, or set it against a stop on its left; backing board under it, sleeves and hair tied back.', source: 'common practice, no source', steps: ['drill-head', 'drill-neck', 'drill-top', 'drill-box', 'fit-blocks']},
  'glue-epoxy': {hazard: 'Uncured epoxy makes skin allergic for good, and its dust does too while it is green.', does: 'Nitrile gloves, no wiping with solvent, and no sanding before it is through.', source: 'HSE guidance on epoxy resins, from memory', steps: ['glue-up', 'glue-head', 'fit-blocks', 'fasten']},
  'glue-ca': {hazard: 'Quick glue bonds skin and eyelids in seconds, stings the eyes, and gets hot on cotton.', does: 'Eye protection and a draught; no cotton gloves or rags. Never pull skin apart: warm soapy water.', source: 'WHO/IPCS CICAD 36, Cyanoacrylates (2001)', steps: ['glue-up', 'glue-head', 'fit-blocks', 'fasten', 'fret']},
  'glue-pu': {hazard: 'Polyurethane glue holds isocyanates, which bring on asthma and stain skin for days.', does: 'Gloves and a draught, and sand the foam only once it is hard.', source: 'HSE guidance on isocyanates, from memory', steps: ['glue-up', 'glue-head', 'fit-blocks', 'fasten']},
  'glue-hide': {hazard: 'Hot glue and its water bath scald.', does: 'Keep the pot at about 60 °C, steady on the bench, cord out of the way, and a thermometer in it.', source: 'common practice, no source', steps: ['glue-up', 'glue-head', 'fit-blocks', 'fasten']},
  'oily-wood': {hazard: 'Oil in this wood keeps glue from taking hold: a joint that looked sound lets go under the strings.', does: 'Plane or scrape the faces, wipe them with acetone or alcohol till the rag stays clean, and glue at once. The solvent asks for a draught, no flame, and gloves.', source: 'Wood Handbook, FPL-GTR-282, ch. 10 (freshly made faces; extractives), from memory; the solvent: common practice, no source', steps: ['glue-up', 'glue-head', 'fit-blocks', 'fasten']},
  chisel: {hazard: 'A chisel that slips goes into the hand in front of it.', does: 'Clamp the box, keep both hands behind the edge, pare towards a line, and keep it sharp.', source: 'common practice, no source', steps: ['notch-box']},
  'fret-wire': {hazard: 'Wire ends fly off when they are nipped.', does: 'Eye protection, and a finger or a rag over the end while nipping.', source: '29 CFR 1910.133(a)(1)', steps: ['fret']},
  'fret-ends': {hazard: 'Nipped fret ends are sharp as fish-hooks until they are filed.', does: 'Do not run a hand along the neck; file them flush and round at once, and pick up the filings with a magnet.', source: 'common practice, no source', steps: ['fret', 'fret-ends']},
  eyes: {hazard: 'Chips and splinters fly from every machine and from many hand tools.', does: 'Eye protection with side shields for all of it, the drill too.', source: '29 CFR 1910.133(a)(1) and (2); ANSI/ISEA Z87.1, from memory', steps: ['mill', 'rip', 'plane', 'saw-scarf', 'round-over', 'drill-head', 'drill-top']},
  noise: {hazard: 'Saws, planers and routers are loud enough to take hearing away a little at a time.', does: 'Ear protection from 85 dBA on. At 100 dBA the law for employers permits 2 hours a day; NIOSH recommends no more than 15 minutes.', source: 'permitted: 29 CFR 1910.95, Table G-16 and (c)(1); recommended: NIOSH 98-126, 85 dBA for 8 hours, halved by each 3 dB, from memory', steps: ['mill', 'rip', 'plane', 'round-over']},
  solder: {hazard: 'Rosin smoke brings on asthma that stays; the iron burns, and lead goes from hand to mouth.', does: 'Draught across the work and your head out of the smoke; rosin-free, lead-free solder if you can. Stand for the iron, and wash before eating.', source: 'HSE INDG248, Solder fume and you; 29 CFR 1910.1025, from memory', steps: ['wire']},
  battery: {hazard: 'A shorted battery gets hot enough to burn, and a button cell that is swallowed kills.', does: 'Fuse or switch in the lead, no loose wires; a screwed lid over every button cell, and children away from them.', source: '16 CFR 1263, button cells, from memory', steps: ['wire']},
  'small-player': {hazard: 'Sharp wire ends, small loose parts and strong strings are no things for small hands.', does: 'Round every string end and fret end, screw small parts down, and let a grown-up put strings on.', source: '16 CFR 1501, small parts, and 1500.49, sharp edges, from memory', steps: ['fret-ends', 'string', 'set-up']},
  'protected-wood': {hazard: 'Wood under CITES that crosses a border without papers can be seized.', does: 'Keep a note of where it came from; ask your CITES office before you send or carry wood, offcuts or the instrument abroad. Listings change: look at the Appendices in force.', source: 'CITES, Appendices I and II with annotations; CITES Decision 18.321 (Rev. CoP19)', steps: ['mill', 'rip']},
} satisfies Record<string, HazardRow>

export type HazardName = keyof typeof hazards

/** What every page with work on it says first. */
export const comesFirst =
  'Local codes, the machine’s manual and licensed practice come first; what stands here does not replace them.'

/** Each caution as short as it may stand beside its step: a name, and what to do. The caution itself says the rest. */
interface CautionSign {
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
  planer: {name: 'thin', does: 'carrier board; 1/32 in (1 mm) a pass'},
  'drill-clamp': {name: 'spin', does: 'clamp it; backing board'},
  'glue-epoxy': {name: 'epoxy', does: 'nitrile gloves; no green sanding'},
  'glue-ca': {name: 'quick glue', does: 'eyes covered; no cotton'},
  'glue-pu': {name: 'PU glue', does: 'gloves and draught'},
  'glue-hide': {name: 'hot glue', does: 'pot steady at 60 °C'},
  'oily-wood': {name: 'oily wood', does: 'scrape, wipe with solvent, glue at once'},
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

/**
 * How long a day may last at each level of noise: as the law permits, 90 dBA for 8 hours and 5 dB halving it, and as is
 * recommended, 85 dBA for 8 hours and 3 dB halving it, rounded down. Sources: 29 CFR 1910.95, Table G-16; NIOSH 98-126,
 * Table 1-1, from memory.
 */
export const noiseLimits = [
  {dBA: 90, permittedH: 8, recommendedMin: 151},
  {dBA: 92, permittedH: 6, recommendedMin: 95},
  {dBA: 95, permittedH: 4, recommendedMin: 47},
  {dBA: 97, permittedH: 3, recommendedMin: 30},
  {dBA: 100, permittedH: 2, recommendedMin: 15},
  {dBA: 102, permittedH: 1.5, recommendedMin: 9},
  {dBA: 105, permittedH: 1, recommendedMin: 4},
  {dBA: 110, permittedH: 0.5, recommendedMin: 1},
  {dBA: 115, permittedH: 0.25, recommendedMin: 0.4},
] as const

/** From this level over a working day an employer must look after hearing. Source: 29 CFR 1910.95(c)(1). */
export const hearingCareDba = 85

/** The most wood dust in the air over a working day, mg/m³: what the law allows, then what is advised. */
// biome-ignore format: a line each
export const dustLimits = [
  {what: 'wood dust, all of it', mgM3: 15, by: 'the law for employers', source: 'OSHA permissible limit for dust not otherwise regulated, 29 CFR 1910.1000'},
  {what: 'wood dust, the fine part', mgM3: 5, by: 'the law for employers', source: 'OSHA permissible limit for dust not otherwise regulated, 29 CFR 1910.1000'},
  {what: 'wood dust', mgM3: 1, by: 'advised', source: 'NIOSH Pocket Guide, wood dust (npgd0667); ACGIH by way of OSHA, Wood Dust'},
  {what: 'western redcedar', mgM3: 0.5, by: 'advised', source: 'ACGIH by way of OSHA, Wood Dust'},
] as const
