import type {BuildValues} from '../../build-file/schema/schema.ts'
import {pastThePostMm} from '../../tables/strings.ts'
import {inch, inchMm} from '../../tables/units.ts'
import {ballMm, woodMm} from '../box/anchors.ts'
import type {Proposal} from '../kit/proposal.ts'
import {markAt, sizeOf, type Written} from '../kit/proposal-texts.ts'
import type {Settled} from '../kit/settled.ts'
import {ferruleNeedsMm} from '../layout/holes.ts'
import {behindAnchorMm} from '../neck-shape/budget.ts'
import {neckWidthAt} from '../neck-shape/taper.ts'
import {packetOf} from '../strings/string-lengths.ts'
import type {Around, Propose} from './around.ts'
import {tooMuchFor} from './push.ts'

/** What a string needs beside it to be threaded (mm): common practice, no source. */
const threadsMm = 0.5

/**
 * Propose what holds the strings: in the neck where it runs past the box, halfway between the box and the wood that
 * must be left behind; over the neck's end or on the tail wall where it does not. A neck too thin for ferrules has
 * plain holes. They stand as far apart as the strings at the bridge, or as the neck lets them. Sizes of ferrules:
 * common practice, no source.
 */
export const proposeAnchors: Propose = (settled, around) => {
  const {values, place, bridge, taper, neck} = around
  const {anchors, strings = []} = values
  if (anchors?.at || anchors?.along || strings.length === 0) return []
  const tailMm = place?.tailMm
  const endMm = taper?.tailStationMm
  if (tailMm === undefined || !bridge || !neck) return []
  if (neck.joins === 'end' || (endMm !== undefined && endMm < tailMm))
    return borne(settled, around, overEnd(settled, around, tailMm))
  if (endMm === undefined) return []
  const proposals = inNeck(settled, around, [tailMm, endMm]) ?? overEnd(settled, around, endMm)
  return borne(settled, around, proposals)
}

type Ruler = {units: 'in' | 'mm'; rulerMm: number}

/** Leave anchors out whose strings would push a bridge on the top down too hard. */
function borne(settled: Settled, around: Around, proposals: Proposal[]): Proposal[] {
  const [first] = proposals
  const what = first && 'texts' in first ? tooMuchFor(settled, around, first.texts) : undefined
  if (!what) return proposals
  return [{key: 'anchors', open: what === 'top' ? 'push sinks the top' : 'push bows the neck'}]
}

/** Holes in the neck between the box's tail edge and its own end (mm); undefined where there is no room for them. */
function inNeck(
  ruler: Ruler,
  around: Around,
  [tailMm, endMm]: readonly [number, number],
): Proposal[] | undefined {
  const {values, taper, neckMm = 0, bridge} = around
  const {anchors, strings = []} = values
  const hole = anchors?.['string-hole'] ?? stringHole(values, ruler)
  const kinds = anchors?.kind
    ? [anchors.kind.value]
    : neckMm >= ferruleNeedsMm
      ? (['ferrule', 'plain'] as const)
      : (['plain'] as const)
  for (const kind of kinds) {
    if (kind === 'tailpiece') return undefined
    const body = kind === 'plain' ? undefined : (anchors?.body ?? bodyOf(kind, hole.mm, ruler))
    const wideMm = body?.mm ?? hole.mm
    const leastMm = Math.max(tailMm + woodMm, bridge!.stationMm) + wideMm / 2
    const mostMm = endMm - behindAnchorMm - wideMm / 2
    const at = placeBetween([leastMm, mostMm], values, ruler)
    if (!at) continue
    const widthMm = (taper && neckWidthAt(at.mm, taper)) ?? 0
    const spacing = anchors?.spacing ?? spacingIn(values, {wideMm, widthMm}, ruler)
    if (!spacing) continue
    const boardEndsMm = values.fingerboard?.to?.mm ?? Number.POSITIVE_INFINITY
    const downMm = at.mm > boardEndsMm ? (values.fingerboard?.thickness?.mm ?? 0) : 0
    return [
      {
        key: 'anchors',
        texts: {
          anchors: {
            kind,
            at: at.text,
            ...(strings.length > 1 && {spacing: spacing.text}),
            ...(body && {body: body.text}),
            'string-hole': hole.text,
            height: negative(markAt(downMm, ruler, 'down')),
          },
        },
        why: 'anchors behind the box',
      },
    ]
  }
  return undefined
}

/** Halfway, or as near to the bridge as there is room where a packet's string might not reach the far posts (mm). */
function placeBetween(
  [leastMm, mostMm]: readonly [number, number],
  {strings = [], head}: BuildValues,
  ruler: Ruler,
): Written | undefined {
  const packetMm = Math.min(...strings.map(({gauge}) => packetOf(gauge?.mm)))
  const reachMm = packetMm - pastThePostMm - (head?.length?.mm ?? 0)
  const middleMm = (leastMm + mostMm) / 2
  const tries = middleMm <= reachMm ? [markAt(middleMm, ruler, 'down'), markAt(middleMm, ruler, 'up')] : []
  return [...tries, markAt(leastMm, ruler, 'up')].find(({mm}) => mm >= leastMm - 1e-6 && mm <= mostMm + 1e-6)
}

/** A tailpiece over the end of the neck or of the box (mm from the nut line). */
function overEnd(ruler: Ruler, {values, bridge, neck, place, taper}: Around, endMm: number): Proposal[] {
  const {anchors, strings = []} = values
  const at = markAt(endMm, ruler, 'down')
  if (anchors?.kind && anchors.kind.value !== 'tailpiece')
    return [{key: 'anchors', open: 'no room for anchors'}]
  if (at.mm <= bridge!.stationMm + inchMm / 2) return [{key: 'anchors', open: 'no room behind the bridge'}]
  const isOnBox = neck!.joins === 'end' || (taper?.tailStationMm ?? 0) < (place?.tailMm ?? 0)
  const spacingMm = (values.spacing?.bridge?.mm ?? 0) / Math.max(1, strings.length - 1)
  return [
    {
      key: 'anchors',
      texts: {
        anchors: {
          kind: 'tailpiece',
          at: at.text,
          ...(strings.length > 1 && {spacing: markAt(spacingMm, ruler, 'down').text}),
          height: isOnBox ? negative(markAt(neck!.aboveTopMm, ruler, 'down')) : '0',
        },
      },
      why: isOnBox ? 'anchors on the wall' : 'anchors over the end',
    },
  ]
}

const negative = ({text, mm}: Written): string => (mm > 0 ? `-${text}` : text)

/** As far apart as the strings at the bridge, and as the neck lets them; undefined where it is too narrow. */
function spacingIn(
  {strings = [], spacing}: BuildValues,
  {wideMm, widthMm}: {wideMm: number; widthMm: number},
  ruler: Ruler,
): Written | undefined {
  const spaces = Math.max(1, strings.length - 1)
  const isLone = strings.length === 1
  const widestMm = (widthMm - 2 * woodMm - wideMm) / spaces
  const wantedMm = isLone ? 0 : (spacing?.bridge?.mm ?? widthMm / 2) / spaces
  const closestMm = isLone ? 0 : wideMm + woodMm
  if (widestMm < closestMm - 1e-6) return undefined
  const apart = markAt(Math.min(Math.max(wantedMm, closestMm), widestMm), ruler, 'down')
  if (apart.mm >= closestMm - 1e-6) return apart
  const wider = markAt(closestMm, ruler, 'up')
  return wider.mm <= widestMm + 1e-6 ? wider : undefined
}

/** The next bit in which the thickest string can be threaded; never one that lets a ball through. */
function stringHole({strings = []}: BuildValues, ruler: Ruler): Written {
  const thickestMm = Math.max(0, ...strings.map(({gauge}) => gauge?.mm ?? 0)) || inch(0.06)
  const stepMm = ruler.units === 'in' ? inch(1 / 32) : 0.5
  const needsMm = Math.max(thickestMm + threadsMm, inch(1 / 16))
  const bit = markAt(needsMm, {units: ruler.units, rulerMm: stepMm}, 'up')
  return bit.mm < ballMm ? bit : markAt(ballMm - 0.1, {units: ruler.units, rulerMm: stepMm / 2}, 'down')
}

/** A ferrule or pin, never smaller than the string's own hole and 1/16 in of metal around it. */
function bodyOf(kind: 'ferrule' | 'pins', holeMm: number, ruler: Ruler): Written {
  const usual = kind === 'ferrule' ? sizeOf('5/16', '8', ruler) : sizeOf('3/16', '5', ruler)
  return usual.mm >= holeMm + inch(1 / 16) ? usual : sizeOf('3/8', '10', ruler)
}
