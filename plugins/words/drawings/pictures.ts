import type {Plan} from '../../plan/plan.ts'
import type {Step} from '../../plan/work/step.ts'
import type {StepFacts} from '../../plan/work/step-facts.ts'
import {stepName} from '../steps.ts'

/** What of a picture is told in words: which part is in hand, and what is made or marked on it now. */
const shows: Readonly<Record<StepFacts['of'], readonly [inHand: string, now: string]>> = {
  mill: ['the stock side by side', 'the face and the edge that are planed'],
  rip: ['the parts to cut side by side', 'their sawn edges'],
  'rip-small': ['the short parts side by side', 'their sawn edges'],
  trim: ['the short parts side by side', 'their sawn ends'],
  'plane-faces': ['the neck’s layers apart', 'the faces that are planed for the glue'],
  'glue-up': ['the neck’s layers apart, pressed together by arrows', 'the faces that are glued'],
  plane: ['the stick', 'its planed face'],
  'mark-lines-stick': ['the stick', 'nut line and centre line'],
  'mark-lines-face': ['the neck', 'nut line and centre line'],
  'mark-lines-board': ['the neck with its fingerboard', 'nut line and centre line'],
  'saw-scarf': ['the end of the stick, the piece sawn off moved away', 'the sawn slope'],
  'glue-head': [
    'the end of the neck, the piece turned over below it and pressed up by an arrow',
    'the faces that are glued',
  ],
  'glue-up-plate': ['the head, its plate above it, pressed down by arrows', 'the faces that are glued'],
  'glue-up-face': ['the neck, what is glued on above it, pressed down by arrows', 'the faces that are glued'],
  'glue-up-board': ['the neck, its fingerboard above it, pressed down by arrows', 'the faces that are glued'],
  'plane-sides': ['the neck', 'its planed sides'],
  'shape-head': ['the head', 'its end'],
  'drill-head': ['the head', 'the holes that are drilled'],
  'drill-neck': ['the neck where it is drilled', 'the holes that are drilled'],
  'drill-neck-dots': ['the neck', 'the dots that are drilled'],
  'drill-top': ['the box', 'the holes that are drilled in its top'],
  'drill-box': ['the box', 'the holes that are drilled in its walls'],
  'cut-down': ['the neck where it runs through the box', 'what is cut down'],
  'groove-nut': ['the neck at the nut line', 'the nut’s groove'],
  'round-over': ['the neck', 'the rounded edges'],
  'sand-board': ['the neck with its fingerboard', 'the rounded face'],
  'mark-lines': ['what the lines are marked on', 'the lines'],
  'burn-marks': ['the neck', 'the lines that are burnt'],
  'slot-frets': ['what the slots are sawn into', 'the slots'],
  fret: ['the neck', 'the frets'],
  'fret-ends': ['the neck', 'the frets whose ends are filed'],
  'box-prepare': ['the box', 'its centre line'],
  'box-strip': ['the box', 'the face that is stripped'],
  'fit-blocks': ['the box without its top, its blocks above their places', 'the blocks'],
  'notch-box': ['the box without its top', 'what the neck is let into'],
  sand: ['neck and box', 'the faces towards you'],
  finish: ['neck and box', 'the faces towards you'],
  'cut-rod': ['the rod', 'its ends'],
  'fit-parts': ['the further parts', 'all of them'],
  'fasten-hardware': ['the neck', 'its hardware'],
  fasten: ['the box and the neck off its place, pushed there by an arrow', 'the screws, where there are any'],
  wire: ['the instrument', 'the jack'],
  'fasten-top': ['the instrument', 'the top'],
  string: ['the instrument', 'its strings'],
  'set-up': ['the strung instrument', 'the bridge'],
}

/** Title and description of a step's picture, for those who don't see it; `numbers` are what is written on it. */
export function pictureWords(
  step: Step,
  {title}: Pick<Plan, 'title'>,
  {numbers, isTurned}: {numbers: readonly string[]; isTurned: boolean},
): {title: string; says: string} {
  const [inHand, now] = shows[step.facts.of]
  const seen = isTurned ? 'lying on its face, seen from its back' : 'seen from above and in front'
  const written = numbers.length > 0 ? ` Written on it: ${numbers.join('; ')}.` : ''
  return {
    title: [stepName(step), title].filter(Boolean).join(', '),
    says: `${inHand.charAt(0).toUpperCase()}${inHand.slice(1)}, ${seen}, the head to the left. Marked heavily: ${now}.${written}`,
  }
}

/** Title and description of the instrument pulled apart, its parts from above down. */
export const apartWords = (
  {title}: Pick<Plan, 'title'>,
  parts: readonly string[],
): {title: string; says: string} => ({
  title: ['Pulled apart', title].filter(Boolean).join(', '),
  says: `The finished instrument pulled apart, seen from above and in front, the head to the left. From below: ${parts.join('; ')}. The numbers are those of the cut list.`,
})

/** Title and description of the finished instrument, drawn as it will stand. */
export const coverWords = ({title}: Pick<Plan, 'title'>): {title: string; says: string} => ({
  title: title ?? 'The instrument',
  says: 'The finished instrument, drawn from its dimensions: seen from above and in front, the head to the left.',
})
