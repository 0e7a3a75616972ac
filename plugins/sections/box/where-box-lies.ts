import type {BlockContent} from 'mdast'
import type {Plan} from '../../plan/shape/plan.ts'
import {angle, facts, force, type Inline, length, note, percent} from '../kit.ts'

/** Say where the box lies under the strings, and how the bridge stands on it and is pushed. */
export function whereBoxLies(plan: Plan): BlockContent[] {
  const {box, bridge} = plan
  const {outside, inside} = box ?? {}
  const at = (mm: number) => length(mm, plan)
  const rows: [string, ...Inline[]][] = []
  if (outside)
    rows.push(['Outside', at(outside.lengthMm), ' × ', at(outside.widthMm), ' × ', at(outside.depthMm)])
  if (inside)
    rows.push(['Inside', at(inside.lengthMm), ' × ', at(inside.widthMm), ' × ', at(inside.heightMm)])
  if (box?.atMm !== undefined && box.tailMm !== undefined)
    rows.push(['From the nut', at(box.atMm), ' to ', at(box.tailMm)])
  if (bridge?.alongMm !== undefined && box?.bridgeFraction !== undefined)
    rows.push([
      'Bridge line',
      at(bridge.alongMm),
      ` from the box’s head-side edge, ${percent(box.bridgeFraction)} of the way along it; on the ${bridge.on ?? 'top'}`,
    ])
  if (bridge?.heightMm !== undefined)
    rows.push(['Bridge height', at(bridge.heightMm), `, from the ${bridge.on ?? 'top'} to the strings`])
  if (bridge?.breakAngleDeg !== undefined)
    rows.push([
      'Strings behind the bridge',
      `go down ${angle(bridge.breakAngleDeg)} to the anchors`,
      ...(bridge.downforceN === undefined
        ? []
        : ['; together they push the bridge down with ', force(bridge.downforceN, plan)]),
    ])
  if (!rows.length) return []
  const isFlat = bridge?.breakAngleDeg !== undefined && bridge.breakAngleDeg < 4
  return [
    facts(rows),
    ...(isFlat
      ? [
          note(
            'So flat an angle lets strings slide sideways and buzz on the bridge: cut a notch for each, or set the anchors lower.',
          ),
        ]
      : []),
  ]
}
