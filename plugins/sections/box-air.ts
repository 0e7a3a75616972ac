import type {BlockContent} from 'mdast'
import type {Plan} from '../plan/plan.ts'
import {inWords, number, stringAtLine} from '../words/quantities.ts'
import {facts, figures, note, paragraph, source, strong, subHeading} from './kit.ts'
import {area} from './measures.ts'

/** Say what note the air in the box answers to and where that falls on the strings; fold volume and frequency away. */
export function airInWords(plan: Plan): BlockContent[] {
  const {box} = plan
  if (box?.resonanceHz === undefined || box.resonanceLowHz === undefined || box.volumeL === undefined)
    return []
  const places = (box.nearestLines ?? []).map(stringAtLine)
  return [
    subHeading('The note of the air'),
    paragraph(
      strong(`The air in the box answers near ${box.nearestNote}`),
      places.length ? `, which is ${inWords(places)}: ` : ': ',
      'notes there come out fuller and die away sooner. ',
      box.stiffNote === box.nearestNote
        ? 'In a box whose walls do not give it would lie a little higher.'
        : `In a box whose walls do not give it would lie near ${box.stiffNote}.`,
    ),
    figures(`Figures: ${number(box.resonanceLowHz, 0)} Hz, in a stiff box ${number(box.resonanceHz, 0)} Hz`, [
      facts([
        ['Air inside', `${number(box.volumeL, 2)} L, less neck and blocks`],
        ...(box.holeAreaMm2 === undefined
          ? []
          : [['Sound holes', area(box.holeAreaMm2, plan), ' together'] as const]),
        ['As thin walls lower it', `${number(box.resonanceLowHz, 1)} Hz`],
        ['In a stiff box', `${number(box.resonanceHz, 1)} Hz`],
      ]),
      note(
        'A larger hole or a smaller box raises it. Tap the top with the holes open, strings damped, and keep what you hear as resonance under measured.',
      ),
      source(
        'J. Woodhouse, Euphonics §4.2.1, with 8/(3π) of the radius added at each end of a hole (Rayleigh); speed of sound 343 m/s at 20 °C (OpenStax University Physics vol. 1, 17.2); walls: Nia et al., Proc. R. Soc. A 471, 20140905 (2015), 0.944.',
      ),
    ]),
  ]
}
