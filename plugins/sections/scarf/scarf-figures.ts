import type {RootContent} from 'mdast'
import type {Plan} from '../../plan/shape/plan.ts'
import {area, facts, figures, force, number, source} from '../kit.ts'

/** Fold away what is glued at the scarf and what the strings ask of it. */
export function scarfFigures(plan: Plan): RootContent[] {
  const {scarf} = plan.neck ?? {}
  if (!scarf) return []
  const {glueAreaMm2, glueForceN, glueStressMpa, slope} = scarf
  const pull =
    glueForceN === undefined || glueStressMpa === undefined
      ? []
      : ([
          ['The strings’ pull along it', force(glueForceN, plan)],
          ['Shear in the glue line', `${number(glueStressMpa, 2)} MPa`],
        ] as const)
  return [
    figures('Figures of the scarf', [
      facts([['Glued', area(glueAreaMm2, plan)], ['Slope', `1 in ${number(slope, 1)}`], ...pull]),
      source(
        'face t/sin θ and run t/tan θ by trigonometry. A joint as strong as the wood would be ten times as long as it is deep (Wood Handbook, FPL-GTR-190, ch. 10); a head’s is less than half of that, so its load has to stay low, and a plate or fingerboard over it carries a part',
      ),
    ]),
  ]
}
