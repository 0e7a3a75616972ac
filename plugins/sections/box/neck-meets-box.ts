import type {BlockContent} from 'mdast'
import type {Plan} from '../../plan/shape/plan.ts'
import {angle, facts, type Inline, length, paragraph, subHeading} from '../kit.ts'

/** Say how the neck joins the box: what stands on what, heights over the top, notch, daylight and shim. */
export function neckMeetsBox(plan: Plan): BlockContent[] {
  const {box, bridge} = plan
  const neck = box?.neck
  if (!neck || !box) return []
  const at = (mm: number) => length(mm, plan)
  const rows: [string, ...Inline[]][] = [['Playing face', ...overTop(neck.aboveTopMm, at)]]
  if (neck.joins !== 'on top') rows.push(['Back of the neck', ...overTop(-neck.backBelowTopMm, at)])
  if (neck.stringAboveTopMm !== undefined)
    rows.push(['Strings over the top', at(neck.stringAboveTopMm), ' at the box’s head-side edge'])
  if (neck.notch)
    rows.push([
      neck.notch.isGiven ? 'Notch' : 'Notch in each end wall',
      at(neck.notch.widthMm),
      ' wide and ',
      at(neck.notch.depthMm),
      ' deep from the box’s upper edge',
      ...(neck.notch.leftMm !== undefined && neck.notch.leftMm > 0
        ? ['; it leaves ', at(neck.notch.leftMm), ' of the wall under it']
        : []),
      ...(neck.notch.besideMm !== undefined && neck.notch.besideMm > 0
        ? [' and ', at(neck.notch.besideMm), ' at each side']
        : []),
    ])
  if (neck.leastGapMm !== undefined && neck.gapMm === undefined)
    rows.push([
      'Daylight under the top',
      'not said under box.neck-gap; the top must not come down on the neck',
    ])
  if (neck.gapMm !== undefined)
    rows.push([
      'Daylight under the top',
      at(neck.gapMm),
      ': cut the neck down by that and the top’s thickness where it passes under it',
    ])
  if (neck.shim)
    rows.push([
      'Shim',
      `for ${angle(neck.shim.angleDeg)} of tilt a wedge `,
      at(neck.shim.lengthMm),
      ' long, from nothing to ',
      at(neck.shim.thickMm),
      neck.shim.angleDeg > 0 ? ' at its tail end' : ' at its head end',
    ])
  return [subHeading('Neck and box'), paragraph(freeBody(neck.joins, bridge?.on)), facts(rows)]
}

function overTop(mm: number, at: (mm: number) => Inline): Inline[] {
  if (Math.abs(mm) < 0.05) return ['level with the top']
  return [at(Math.abs(mm)), mm > 0 ? ' above the top' : ' below the top’s face']
}

/** What the strings really do to the joint, by how the neck joins. */
function freeBody(joins: string, on: string | undefined): string {
  if (joins === 'through')
    return 'The neck runs through the box: it takes the pull of the strings, and the top takes the push of the bridge. It must not touch the top under the bridge.'
  if (joins === 'end')
    return 'The neck ends at the box: the joint takes the strings’ pull times their height over it, as a lever on its screws or its glue.'
  return on === 'top'
    ? 'The neck lies on the top and the bridge stands on the box: the strings lift the neck as hard as they push the bridge down, and its screws take that.'
    : 'The neck lies on the top with the bridge on it: where the strings are anchored on the neck as well, their pull closes inside it, and its screws carry almost none of it.'
}
