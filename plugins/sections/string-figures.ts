import type {BlockContent} from 'mdast'
import type {Plan} from '../plan/plan.ts'
import type {StringPlan} from '../plan/strings/strings.ts'
import {musicWireSource} from '../tables/music-wire.ts'
import {wireInches} from '../words/lengths.ts'
import {inWords, massPerLength, number, percent} from '../words/quantities.ts'
import {figures, note, paragraph, source} from './kit.ts'
import {table} from './kit-table.ts'

/** Say how near breaking the strings are; fold mass, stress, stretch and inharmonicity away, with their sources. */
export function stringFigures({strings = []}: Plan): BlockContent[] {
  const weighed = strings.filter(({massPerLengthKgM}) => massPerLengthKgM !== undefined)
  if (weighed.length === 0) return []
  const breaking = breakingInWords(weighed)
  return [
    ...(breaking ? [paragraph(breaking)] : []),
    figures('Figures: mass, stress, stretch', [
      table({
        caption: 'What each string weighs and bears',
        columns: [
          {head: 'String'},
          {head: 'Pitch', align: 'right'},
          {head: 'Mass per length', align: 'right'},
          {head: 'Known from'},
          {head: 'Stress', align: 'right'},
          {head: 'Of its strength', align: 'right'},
          {head: 'Stretch at pitch', align: 'right'},
          {head: 'Inharmonicity', align: 'right'},
        ],
        rows: weighed.map((string) => [
          string.name,
          `${number(string.frequencyHz, 2)} Hz`,
          massPerLength(string.massPerLengthKgM!),
          knownFrom[string.massFrom ?? 'plain'] ?? '',
          string.stressMpa === undefined || !string.breakKnown ? '' : `${number(string.stressMpa, 0)} MPa`,
          string.breakFraction === undefined ? '' : percent(string.breakFraction),
          stretchWords(string),
          string.inharmonicity === undefined ? '' : `${number(string.inharmonicity * 1e6, 1)} × 10⁻⁶`,
        ]),
      }),
      ...weighed.flatMap(coreInWords).map((said) => note(said)),
      note(
        'Stretch is over the scale length where the string sticks at nut and bridge, and over all of it from anchor to post where it slides over them; inharmonicity is B in f = n·f₁·√(1 + B·n²).',
      ),
      source(
        `pull by Mersenne’s law (OpenStax University Physics vol. 1, 16.3); strength: the least of ${musicWireSource}; stiffness of steel: Shigley’s Mechanical Engineering Design, Table 10-5; inharmonicity: H. Fletcher, J. Acoust. Soc. Am. 36, 203 (1964).`,
      ),
    ]),
  ]
}

/** What a string stretches by, stuck and sliding, or stuck alone. */
function stretchWords({stretchMm, stretchWholeMm}: StringPlan): string {
  if (stretchMm === undefined) return ''
  const stuck = number(stretchMm, 1)
  return stretchWholeMm === undefined ? `${stuck} mm` : `${stuck} to ${number(stretchWholeMm, 1)} mm`
}

const knownFrom: Record<string, string> = {
  mass: 'the packet’s mass',
  tension: 'the packet’s pull',
  plain: 'gauge and density',
  wound: 'core and round wrap',
}

function breakingInWords(strings: readonly StringPlan[]): string | undefined {
  const known = strings.filter(({breakFraction}) => breakFraction !== undefined)
  const hardest = known.reduce<StringPlan | undefined>(
    (most, one) => ((one.breakFraction ?? 0) > (most?.breakFraction ?? 0) ? one : most),
    undefined,
  )
  const unknown = strings.filter(
    ({breakFraction, coreAssumed, wound, tensionN}) =>
      breakFraction === undefined && wound && coreAssumed && tensionN !== undefined,
  )
  const open =
    unknown.length > 0
      ? ` Nothing is said of ${inWords(unknown.map(({name}) => name))}, whose core is assumed.`
      : ''
  if (!hardest) return open.trim() || undefined
  const part = percent(hardest.breakFraction!)
  return `${known.length > 1 ? `Nearest to breaking is ${hardest.name}, tuned to` : `${hardest.name} is tuned to`} ${part} of its strength.${open}`
}

/** How little the pull hangs on an assumed core, and how much the stress does. */
function coreInWords({name, coreMm, coreDoubt, tensionN, stressMpa}: StringPlan): string[] {
  if (!coreDoubt || coreMm === undefined || !tensionN || !stressMpa) return []
  const [least = tensionN, most = tensionN] = coreDoubt.tensionN
  const isMuch = (most - least) / tensionN > 0.06
  const spread = ([low = 0, high = 0]: readonly number[], digits: number) =>
    `${number(low, digits)} to ${number(high, digits)}`
  return [
    `${name}’s core is assumed at ${wireInches(coreMm)} in (${number(coreMm, 2)} mm). A core a twentieth of the gauge thinner or thicker ${isMuch ? 'moves the pull,' : 'hardly moves the pull,'} ${spread(coreDoubt.tensionN, 0)} N, ${isMuch ? 'and' : 'but'} the stress much, ${spread(coreDoubt.stressMpa, 0)} MPa.`,
  ]
}
