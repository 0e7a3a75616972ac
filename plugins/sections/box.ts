import type {BlockContent} from 'mdast'
import type {Plan} from '../plan/plan.ts'
import {saddleRuler} from '../words/lengths.ts'
import {angle, percent} from '../words/quantities.ts'
import {airInWords} from './box-air.ts'
import {endJointInWords} from './box-end-joint.ts'
import {anchorsInWords, blocksToGlue, prepareBox, strapButtons} from './box-fittings.ts'
import {lidInWords} from './box-lid.ts'
import {wiring} from './box-wiring.ts'
import {facts, fold, holds, type Inline, note, paragraph, strong, subHeading} from './kit.ts'
import {force, length, lengthAlone} from './measures.ts'
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
  content: ({plan, build}) => {
    const parts = [
      ['sizes', whereBoxLies(plan)],
      ['joint', neckMeetsBox(plan)],
      ['preparing', prepareBox(plan, build)],
      ['blocks', blocksToGlue(plan, build)],
      ['air', airInWords(plan)],
      ['anchors', anchorsInWords(plan, build)],
      ['pickup', wiring(plan, build)],
      ['strap', strapButtons(plan)],
    ] as const
    return [
      paragraph(...boxInWords(plan)),
      ...fold(
        holds(...parts),
        parts.flatMap(([, content]) => content),
      ),
    ]
  },
}

const joinWords: Readonly<Record<string, string>> = {
  'on top': 'the neck on its top',
  through: 'the neck through it',
  end: 'the neck at its end',
}

/** Say in one line how large the box is, how the neck meets it, and what its air answers to. */
function boxInWords(plan: Plan): Inline[] {
  const {outside, neck, nearestNote} = plan.box ?? {}
  if (!outside) return []
  const at = (mm: number) => lengthAlone(mm, plan)
  const joins = joinWords[neck?.joins ?? '']
  return [
    strong(at(outside.lengthMm), ' × ', at(outside.widthMm), ' × ', at(outside.depthMm)),
    ...(joins ? [`, ${joins}`] : []),
    ...(nearestNote ? [`; the air answers near ${nearestNote}`] : []),
    '.',
  ]
}

/** Say where the box lies under the strings, and how the bridge stands on it and is pushed. */
function whereBoxLies(plan: Plan): BlockContent[] {
  const {action, box, bridge} = plan
  const {outside, inside} = box ?? {}
  const at = (mm: number) => length(mm, plan)
  const high = (mm: number) => lengthAlone(mm, saddleRuler(plan))
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
    rows.push([
      'Bridge height',
      high(bridge.heightMm),
      ` strung, from the ${bridge.on ?? 'top'} to the strings`,
      ...(action ? ['; build it to ', high(action.bridgeBuiltMm)] : []),
    ])
  if (bridge?.breakAngleDeg !== undefined)
    rows.push([
      'Strings behind the bridge',
      `go down ${angle(bridge.breakAngleDeg)} to the anchors`,
      ...(bridge.downforceN === undefined
        ? []
        : ['; together they push the bridge down with ', force(bridge.downforceN, plan)]),
    ])
  if (!rows.length) return []
  return [
    facts(rows),
    ...(bridge?.isFlat
      ? [
          note(
            'So flat an angle lets strings slide sideways and buzz on the bridge: cut a notch for each, or set the anchors lower.',
          ),
        ]
      : []),
    ...lidInWords(plan),
  ]
}

/** Say how the neck joins the box: what stands on what, heights over the top, notch, daylight and shim. */
function neckMeetsBox(plan: Plan): BlockContent[] {
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
      ' deep from the box’s upper edge, the top on',
      ...(neck.notch.topOffMm === undefined
        ? []
        : [' (with the top off, ', at(neck.notch.topOffMm), ' from the wall’s own edge)']),
      ...(neck.notch.tailWidthMm === undefined
        ? []
        : ['; in the tail wall ', at(neck.notch.tailWidthMm), ' wide, since the neck tapers']),
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
  return [
    subHeading('Neck and box'),
    paragraph(freeBody(neck.joins, bridge?.on)),
    facts(rows),
    ...endJointInWords(plan),
  ]
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
    return 'The neck ends at the box: the strings turn it about the upper edge of the box’s end, and the joint takes their pull times their height over that edge. Screws and glue share nothing: either the screws carry it all, or the glue does.'
  return on === 'top'
    ? 'The neck lies on the top and the bridge stands on the box: the strings lift the neck as hard as they push the bridge down, and its screws take that.'
    : 'The neck lies on the top with the bridge on it: where the strings are anchored on the neck as well, their pull closes inside it, and its screws carry almost none of it.'
}
