import type {BlockContent} from 'mdast'
import type {Plan} from '../../plan/shape/plan.ts'
import {area, facts, figures, inWords, note, number, paragraph, source, strong, subHeading} from '../kit.ts'

/** Say what note the air in the box answers to and where that falls on the strings; fold volume and frequency away. */
export function airInWords(plan: Plan): BlockContent[] {
  const {box} = plan
  if (box?.resonanceHz === undefined || box.resonanceLowHz === undefined || box.volumeL === undefined)
    return []
  const places = (box.nearestLines ?? []).map(({string, label}) =>
    label === '0' ? `the open ${string}` : `line ${label} of ${string}`,
  )
  return [
    subHeading('The note of the air'),
    paragraph(
      strong(`The air in the box answers near ${box.nearestNote}`),
      places.length ? `, which is ${inWords(places)}: ` : ': ',
      'notes there come out fuller and die away sooner. Thin walls give, so tapped with the holes open it will sound up to a semitone lower.',
    ),
    figures(`Figures: ${number(box.resonanceLowHz, 0)} to ${number(box.resonanceHz, 0)} Hz`, [
      facts([
        ['Air inside', `${number(box.volumeL, 2)} L, less neck and blocks`],
        ...(box.holeAreaMm2 === undefined
          ? []
          : [['Sound holes', area(box.holeAreaMm2, plan), ' together'] as const]),
        ['In a stiff box', `${number(box.resonanceHz, 1)} Hz`],
        ['As thin walls lower it', `${number(box.resonanceLowHz, 1)} Hz`],
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
