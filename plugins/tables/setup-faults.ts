/** A fault that a maker meets when an instrument is strung up: its likely cause, and what to do. */
export interface SetupFaultRow {
  fault: string
  cause: string
  cure: string
}

// biome-ignore format: a line each
/** Source: common practice, no source. */
export const setupFaults = {
  'open-buzz': {fault: 'An open string buzzes', cause: 'It lies too low at the nut, or its slot is wider at the back than at the front.', cure: 'Raise the nut with a slip of veneer, or cut the slot so that it slopes towards the head and bears at its front edge.'},
  'one-fret-buzz': {fault: 'A string buzzes at one fret', cause: 'The next fret towards the bridge stands high, or has come loose.', cure: 'Rock a short straight edge over three frets, tap the high one down or dress its crown, and try again.'},
  'back-bow': {fault: 'Open strings and the first few frets buzz', cause: 'The neck is bowed back: its middle stands up into the strings.', cure: 'Press a string at the first and the last fret: it has to clear the frets between by the thickness of a card. If it does not, leave it tuned up for a day, take heavier strings, or level the frets.'},
  'too-hollow': {fault: 'The strings stand high over the middle, and go sharp when they are pressed there', cause: 'They pull the neck hollow. That lifts them off the lines; it makes nothing buzz.', cure: 'Lower the bridge by twice what the octave has gained. If it goes on, take lighter strings or tune lower.'},
  'string-hops': {fault: 'A string hops off the bridge', cause: 'It goes down too little behind the bridge, or the notch is too shallow.', cure: 'File the notch half the string deep, and lead the string down behind the bridge by 5° or more.'},
  'slide-rattles': {fault: 'The slide rattles on the marks or the face', cause: 'The strings lie too low for a slide, or it is pressed.', cure: 'Raise nut and bridge until it glides free, or take heavier strings; inlaid or burnt marks must lie level with the face.'},
  'dead-note': {fault: 'One note booms and dies', cause: 'It is the note that the box itself answers to, which takes the string’s strength away.', cure: 'Tune all strings half a tone up or down, change the size of a sound hole a little, or lay a weight inside the lid and listen.'},
  'tuner-slips': {fault: 'A string will not stay in tune', cause: 'It slips on its post, or sticks in the nut.', cure: 'Wind three turns, each below the last, lock the first under the second, stretch the string by hand, and rub pencil into the slot. Tighten the tuner’s screw.'},
  'hum-touched': {fault: 'It hums, and less or more when the strings are touched', cause: 'The screen of the lead is open, or the coil’s strings have no ground.', cure: 'Check the jack’s outer lug, twist or screen the leads, and ground strings only where the pickup is a coil.'},
  howl: {fault: 'It howls when it is turned up', cause: 'The amplifier shakes the lid, and the pickup hears it.', cure: 'Turn away from the amplifier, bed the disc on a soft pad or glue it under a block, and stuff a cloth into the sound hole.'},
} satisfies Record<string, SetupFaultRow>

export type SetupFault = keyof typeof setupFaults
