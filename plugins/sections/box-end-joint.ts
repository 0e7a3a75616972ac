import type {BlockContent} from 'mdast'
import type {Plan} from '../plan/plan.ts'
import {number} from '../words/quantities.ts'
import {facts, figures, type Inline, note, paragraph, source} from './kit.ts'
import {force, length} from './measures.ts'

/** Say what the strings ask of a neck's joint at the box's end, what carries it, and what glue alone would come to. */
export function endJointInWords(plan: Plan): BlockContent[] {
  const {endJoint, fasteners = []} = plan
  if (!endJoint) return []
  const {pullN, leverMm, momentNmm, face, glue, hasBlock} = endJoint
  const at = (mm: number) => length(mm, plan)
  const along = fasteners.filter(({joinsNeck, way}) => joinsNeck && way === 'along')
  const loads = along.flatMap(({loadN}) => loadN ?? [])
  const screws: Inline[] = loads.length
    ? [
        ` ${along.length === 1 ? 'One screw carries' : `${along.length} screws carry`} it, the most loaded with `,
        force(Math.max(...loads), plan),
        '.',
      ]
    : []
  const torn = `${number(glue.stressMpa, 2)} MPa`
  const breaks = glue.breaksMpa === undefined ? 'not known' : `${number(glue.breaksMpa, 2)} MPa`
  return [
    paragraph(
      'The strings pull with ',
      force(pullN, plan),
      ', ',
      at(leverMm),
      ' over the edge that the neck turns about.',
      ...screws,
      hasBlock ? ' The end block behind the wall spreads their heads, and keeps the wall flat.' : '',
    ),
    figures(`Figures: ${number(momentNmm / 1000, 2)} N·m on the joint`, [
      facts([
        ['Turning the neck', `${number(momentNmm / 1000, 2)} N·m about the upper edge of the box’s end`],
        ['The neck’s end on the wall', at(face.widthMm), ' × ', at(face.heightMm)],
        ['Glue alone would be torn by', torn, ' at the neck’s back'],
        [
          'It breaks at',
          breaks,
          glue.weaker === undefined
            ? ''
            : glue.weaker === 'wall'
              ? ', where the wall’s wood tears across its grain'
              : ', a quarter of the neck’s strength along the grain',
        ],
      ]),
      note('A third of it is the most to ask of glue that stays under load: common practice, no source.'),
      source(
        `Statics; the glued face as a rectangle pressed off its middle. End grain: at best 25 % of the tensile strength (Wood Handbook, FPL-GTR-190, ch. 10), which the strength in bending stands for (ch. 5); across the grain by the density (Table 5-11a, from memory).`,
      ),
    ]),
  ]
}
