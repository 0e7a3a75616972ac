import type {BlockContent, RootContent} from 'mdast'
import type {Plan} from '../../plan/shape/plan.ts'
import {area, facts, figures, length, lengthAlone, massPerLength, number, source, table} from '../kit.ts'

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
      section.what ?? '',
      length(section.stationMm, plan),
      lengthAlone(section.widthMm, plan),
      lengthAlone(section.thicknessMm, plan),
      area(section.areaMm2, plan),
      section.neutralAxisMm === undefined ? '' : lengthAlone(section.neutralAxisMm, plan),
      section.eiNmm2 === undefined ? '' : number(section.eiNmm2 / 1e6, 1),
      section.massPerLengthKgM === undefined
        ? ''
        : massPerLength(section.massPerLengthKgM).replace(' g/m', ''),
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
