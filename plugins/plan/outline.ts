import type {BuildValues} from '../build-file/schema.ts'
import {neckTaper} from './neck-taper.ts'
import {neckWidthAt} from './neck-width-at.ts'
import type {PlanPart} from './part.ts'
import type {HeadOutline, NeckOutline, Outline} from './shape/outline.ts'
import type {Plan} from './shape/plan.ts'

/**
 * Gather what drawings and templates need of the design and no other concern plans: the outlines of neck and head and
 * the sizes of what stands on them, in mm. A head is drawn as wide as the neck at the nut, since the file gives no
 * other outline. What is not known is absent, or 0 where a drawing then shows a mere line.
 */
export const outline: PlanPart = ({values}, soFar) => {
  const neck = neckOutline(values, soFar)
  if (!neck) return {}
  const head = headOutline(values, neck)
  const parts: Outline = {
    neck,
    ...(head && {head}),
    ...(values.nut && {nut: nutOutline(values)}),
    ...(soFar.bridge && {bridge: bridgeOutline(values, soFar.bridge.stationMm)}),
    ...(values.tuners && {tuners: tunerSizes(values.tuners)}),
    ...(values.anchors && {anchors: anchorSizes(values.anchors)}),
  }
  return {outline: parts}
}

function neckOutline(values: BuildValues, {scale, box, neck: planned}: Plan): NeckOutline | undefined {
  const {neck, fingerboard} = values
  const taper = neckTaper(values)
  const thicknessMm = neck?.thickness?.mm
  if (!neck || !taper || thicknessMm === undefined) return undefined
  const budget = planned?.budget
  const joins = neck.joins?.value ?? 'on top'
  const known =
    taper.tailStationMm ?? (joins === 'end' ? box?.atMm : budget && budget.lengthMm - budget.headMm)
  const tailMm = known ?? scale?.lengthMm
  if (tailMm === undefined || tailMm <= 0) return undefined
  const roundOver = roundOverOf(values, box?.atMm)
  return {
    nutWidthMm: taper.nutMm,
    tailWidthMm: taper.tailMm ?? taper.nutMm,
    tailMm,
    isOpen: known === undefined,
    thicknessMm,
    joins,
    ...(neck['above-top'] && {aboveTopMm: neck['above-top'].mm}),
    tiltDeg: neck.angle?.deg ?? 0,
    ...(fingerboard?.thickness && {
      fingerboard: {
        fromMm: fingerboard.from?.mm ?? 0,
        toMm: Math.min(fingerboard.to?.mm ?? tailMm, tailMm),
        thicknessMm: fingerboard.thickness.mm,
      },
    }),
    ...(roundOver && {roundOver}),
  }
}

function roundOverOf({neck, head}: BuildValues, boxMm: number | undefined) {
  const roundOver = neck?.['round-over']
  if (!roundOver?.radius) return undefined
  const place = (end: typeof roundOver.from) => {
    if (!end || 'mm' in end) return end?.mm
    return {scarf: -(head?.ledge?.mm ?? 0), nut: 0, box: boxMm}[end.value]
  }
  const [fromMm, toMm] = [place(roundOver.from) ?? 0, place(roundOver.to) ?? boxMm]
  if (toMm === undefined || toMm <= fromMm) return undefined
  return {radiusMm: roundOver.radius.mm, fromMm, toMm}
}

function headOutline({head}: BuildValues, neck: NeckOutline): HeadOutline | undefined {
  if (!head?.length) return undefined
  const joint = head.joint?.value ?? 'straight'
  return {
    lengthMm: head.length.mm,
    widthMm: neck.nutWidthMm,
    thicknessMm: head.thickness?.mm ?? neck.thicknessMm,
    joint,
    angleDeg: joint === 'straight' ? 0 : (head.angle?.deg ?? 0),
    ledgeMm: head.ledge?.mm ?? 0,
    dropMm: joint === 'straight' ? (head.drop?.mm ?? 0) : 0,
  }
}

function nutOutline({nut}: BuildValues) {
  const kind = nut?.kind?.value ?? 'flat'
  return {kind, alongMm: nut?.diameter?.mm ?? 0, grooveMm: nut?.groove?.mm ?? 0}
}

function bridgeOutline(values: BuildValues, stationMm: number) {
  const taper = neckTaper(values)
  const widthMm = taper && neckWidthAt(stationMm, taper)
  const {bridge, spacing} = values
  return {
    lengthMm: bridge?.length?.mm ?? Math.max(widthMm ?? 0, spacing?.bridge?.mm ?? 0),
    footMm: bridge?.foot?.mm ?? 0,
  }
}

const tunerSizes = (tuners: NonNullable<BuildValues['tuners']>) => ({
  ...(tuners.side && {side: tuners.side.value}),
  ...(tuners['post-hole'] && {postHoleMm: tuners['post-hole'].mm}),
  ...(tuners.button && {buttonMm: tuners.button.mm}),
  ...(tuners['string-height'] && {stringHeightMm: tuners['string-height'].mm}),
})

const anchorSizes = (anchors: NonNullable<BuildValues['anchors']>) => ({
  ...(anchors.kind && {kind: anchors.kind.value}),
  ...(anchors.body && {bodyMm: anchors.body.mm}),
  ...(anchors['string-hole'] && {stringHoleMm: anchors['string-hole'].mm}),
  heightMm: anchors.height?.mm ?? 0,
})
