import type {BlockContent, RootContent} from 'mdast'
import {toString as wordsOf} from 'mdast-util-to-string'
import type {Bow} from '../plan/neck/bow.ts'
import type {Plan} from '../plan/plan.ts'
import {saddleRuler} from '../words/lengths.ts'
import {bowWhy} from '../words/neck.ts'
import {neckPlaceName} from '../words/places.ts'
import {gramsPerMetre, number} from '../words/quantities.ts'
import {facts, figures, type Inline, inline, needed, source} from './kit.ts'
import {table} from './kit-table.ts'
import {area, length, lengthAlone} from './measures.ts'
import {insideInWords} from './neck-inside.ts'

/** Say how far the strings bow the neck, whether that is too much, and what they do to it; or what would tell. */
export function bowInWords(plan: Plan): Inline[][] {
  const {bow, layup} = plan.neck ?? {}
  if (bow) {
    return [
      verdict(plan, bow),
      ...doubts(plan, bow),
      [sentence(bowWhy[bow.freeBody])],
      ...heightsInWords(plan),
      ...insideInWords(plan),
    ]
  }
  if (plan.neck?.inside) return insideInWords(plan)
  const unknown = layup?.layers.find(({isWoodKnown}) => !isWoodKnown)
  if (!unknown) return []
  return [['Bow and weight depend on its wood. ', ...needed([`${unknown.of}.wood`])]]
}

/** Say how far the strings bow it, and how far in time where that is more: wood under a load that stays goes on giving. */
function verdict(plan: Plan, bow: Bow): Inline[] {
  const {reliefMm, reliefAfterCreepMm, tooLow, tooHollow} = bow
  const isTooMuch = tooLow || tooHollow || plan.neck?.inside?.tooThin
  const now = bowed(plan, reliefMm)
  const inTime = bowed(plan, reliefAfterCreepMm)
  return [
    isTooMuch ? 'Not stiff enough: the strings bow it by ' : 'Stiff enough: the strings bow it by ',
    ...now,
    ...(wordsOf(inline(now)) === wordsOf(inline(inTime)) ? [' now and later'] : [', later ', ...inTime]),
    ...(tooLow ? [`, more than they stand above it at line ${tooLow.label}`] : []),
    '.',
  ]
}

/** Say between what the bow may lie, and what frets bear. */
function doubts(plan: Plan, {reliefMm, rangeMm, mostMm}: Bow): Inline[][] {
  const [low = reliefMm, high = reliefMm] = rangeMm
  return [
    ...(high - low > plan.rulerMm / 2
      ? [['As box and wood have it, that is from ', ...bowed(plan, low), ' to ', ...bowed(plan, high), '.']]
      : []),
    ...(mostMm === undefined
      ? []
      : [['Frets bear a hollow of ', lengthAlone(mostMm, plan), ' in time (common practice, no source).']]),
  ]
}

/** Say that the heights are those of the strung instrument, what to build the bridge to, and what time makes of them. */
function heightsInWords({action, bridge, units}: Plan): Inline[][] {
  if (!action) return []
  const {bridgeBuiltMm, reliefMm, reliefFrom, sinkMm, octaveMm, octaveAfterCreepMm} = action
  const ruler = saddleRuler({units})
  const from = bridge?.on === 'top' ? 'from the top' : 'from the neck'
  const build: Inline[] = [
    'The heights drawn are those of the strung instrument (common practice, no source). So build the bridge to ',
    length(bridgeBuiltMm, ruler),
    `, ${from} to the strings: strung, the neck is `,
    ...(Math.abs(reliefMm) < ruler.rulerMm / 2
      ? ['straight']
      : [reliefMm > 0 ? 'hollow by ' : 'raised by ', lengthAlone(Math.abs(reliefMm), ruler)]),
    ` at the octave${reliefFrom === 'file' ? ', as the file says' : ''}, `,
    ...(sinkMm > 0 ? ['the top sinks under the bridge by ', lengthAlone(sinkMm, ruler), ', '] : []),
    'and the octave stands as drawn.',
  ]
  if (octaveAfterCreepMm === undefined) return [build]
  if (Math.abs(octaveAfterCreepMm - octaveMm) < ruler.rulerMm / 2)
    return [[...build, ' In time neck and top give way, and its height hardly changes.']]
  const later: Inline[] = [
    ' In time its height may go from ',
    lengthAlone(octaveMm, ruler),
    ' to ',
    lengthAlone(octaveAfterCreepMm, ruler),
    `; then ${octaveAfterCreepMm < octaveMm ? 'raise' : 'lower'} the bridge by twice the difference.`,
  ]
  return [[...build, ...later]]
}

function bowed(plan: Plan, mm: number): Inline[] {
  if (mm >= plan.rulerMm / 2) return [lengthAlone(mm, plan)]
  return ['less than ', lengthAlone(plan.rulerMm, plan)]
}

const sentence = (words: string) => `${words[0]!.toUpperCase()}${words.slice(1)}.`

/** Fold away the sections across the neck, its margin against buckling and where the numbers come from. */
export function neckFigures(plan: Plan): RootContent[] {
  const {sections, bow} = plan.neck ?? {}
  if (!sections) return []
  const across = table({
    caption: 'The neck cut across',
    columns: [
      {head: 'Where'},
      {head: 'From the nut', align: 'right'},
      {head: 'Wide', align: 'right'},
      {head: 'Thick', align: 'right'},
      {head: 'Area', align: 'right'},
      {head: 'Neutral axis under the face', align: 'right'},
      {head: 'Stiffness EI, N·m²', align: 'right'},
      {head: 'Weight, g/m', align: 'right'},
    ],
    rows: sections.map((section) => [
      section.what ? neckPlaceName(section.what) : '',
      length(section.stationMm, plan),
      lengthAlone(section.widthMm, plan),
      lengthAlone(section.thicknessMm, plan),
      area(section.areaMm2, plan),
      section.neutralAxisMm === undefined ? '' : lengthAlone(section.neutralAxisMm, plan),
      section.eiNmm2 === undefined ? '' : number(section.eiNmm2 / 1e6, 1),
      section.massPerLengthKgM === undefined ? '' : gramsPerMetre(section.massPerLengthKgM),
    ]),
  })
  const rest: BlockContent[] = bow
    ? [
        facts([
          [
            'Bows between',
            lengthAlone(bow.fromMm, plan),
            ' and ',
            lengthAlone(bow.toMm, plan),
            ' from the nut',
          ],
          ...(plan.neck?.inside?.bucklingMargin === undefined
            ? []
            : [
                [
                  'Margin against buckling inside the box',
                  `${number(plan.neck.inside.bucklingMargin, 0)} times the strings’ pull`,
                ] as const,
              ]),
          ...(bow.bucklingMargin === undefined
            ? []
            : [
                [
                  'Margin against buckling',
                  `${number(bow.bucklingMargin, 0)} times the strings’ pull`,
                ] as const,
              ]),
        ]),
      ]
    : []
  return [
    figures('Figures of the neck', [
      across,
      ...rest,
      source(
        'Wood Handbook, FPL-GTR-190, Tables 5-3a and 13-5, averages at 12 % moisture; transformed section and end couples: Gere & Goodno, Mechanics of Materials; a load that stays doubles the bow in time: Wood Handbook, FPL-GTR-282, ch. 5',
      ),
    ]),
  ]
}
