import {airInWords} from './box/air-in-words.ts'
import {anchorsInWords} from './box/anchors-in-words.ts'
import {blocksToGlue} from './box/blocks-to-glue.ts'
import {neckMeetsBox} from './box/neck-meets-box.ts'
import {prepareBox} from './box/prepare-box.ts'
import {strapButtons} from './box/strap-buttons.ts'
import {whereBoxLies} from './box/where-box-lies.ts'
import {wiring} from './box/wiring.ts'
import type {Section} from './section.ts'

/** Where the box lies and how the neck meets it, how to prepare it, what its air answers to, anchors and wiring. */
export const box: Section = {
  name: 'box',
  title: 'Box',
  needs: ({build: {values}, plan}) => {
    if (plan.box?.outside) return []
    if (!values.box) return ['box']
    return (['length', 'width', 'depth'] as const)
      .filter((key) => !values.box?.[key])
      .map((key) => `box.${key}`)
  },
  content: ({plan, build}) => [
    ...whereBoxLies(plan),
    ...neckMeetsBox(plan),
    ...prepareBox(plan, build),
    ...blocksToGlue(plan, build),
    ...airInWords(plan),
    ...anchorsInWords(plan, build),
    ...wiring(plan, build),
    ...strapButtons(plan),
  ],
}
