import {writeLength} from '../build-file/quantities/write-length.ts'
import type {Check} from './rule.ts'

/** A neck on top whose thickness and above-top put the playing face at two heights, by more than the ruler shows. */
export const aboveTopDisagrees: Check = {
  rule: 'above-top-disagrees',
  find: ({values: {neck, box}}, plan) => {
    const {aboveTopMm, faceByThicknessMm} = plan.box?.neck ?? {}
    if (aboveTopMm === undefined || faceByThicknessMm === undefined) return []
    if (Math.abs(aboveTopMm - faceByThicknessMm) <= plan.rulerMm + 1e-6) return []
    const thickness = neck?.thickness?.text ?? 'the laminations’ sum'
    const letIn = box?.notch?.depth ? `, let in by ${box.notch.depth.text},` : ''
    const text = writeLength(faceByThicknessMm, plan)
    return [
      {
        at: 'neck.above-top',
        message: `neck.above-top says ${neck?.['above-top']?.text}, but a neck of thickness ${thickness}${letIn} on top puts its playing face ${text} above it`,
        ...(faceByThicknessMm > 0 && {expected: [text]}),
        cause: neck?.thickness ? 'neck.thickness' : 'neck.laminations',
      },
    ]
  },
}

/** A neck said to run through the box, or to end at it, that lies wholly above its top. */
export const neckMissesBox: Check = {
  rule: 'neck-misses-box',
  find: ({values}, {box, ...plan}) => {
    const neck = box?.neck
    const said = values.neck?.['above-top']
    if (!neck || neck.joins === 'on top' || !said || neck.backBelowTopMm > 1e-6) return []
    const level = writeLength(neck.faceLevelMm, plan)
    return [
      {
        at: 'neck.above-top',
        message: `a playing face ${said.text} above the top lifts the whole neck, ${writeLength(neck.thicknessMm, plan)} thick, over the box; joins: on top, or ${level} above the top, would do`,
        expected: [level],
        cause: 'neck.joins',
      },
    ]
  },
}

/** A neck that runs through and comes down into the box’s back. */
export const neckTooTall: Check = {
  rule: 'neck-too-tall',
  find: ({values}, {box, ...plan}) => {
    const neck = box?.neck
    if (neck?.tallestMm === undefined || neck.thicknessMm <= neck.tallestMm + 1e-6) return []
    const overMm = neck.thicknessMm - neck.tallestMm
    const over = writeLength(overMm, plan, 'up')
    const tallest = neck.tallestMm > 0 ? writeLength(neck.tallestMm, plan, 'down') : undefined
    const higher = writeLength(neck.aboveTopMm + overMm, plan, 'up')
    const isLayered = values.neck?.laminations !== undefined
    return [
      {
        at: isLayered || !tallest ? 'neck.above-top' : 'neck.thickness',
        message: `this neck runs through ${over} deeper than the inside of the box; ${tallest ? `a thickness of ${tallest} would do, or ` : ''}a playing face ${higher} above the top`,
        expected: [isLayered || !tallest ? higher : tallest],
        cause: 'box.depth',
      },
    ]
  },
}

/** A neck that runs through without daylight under a top that carries the bridge. */
export const neckTouchesTop: Check = {
  rule: 'neck-touches-top',
  find: ({values}, {box, ...plan}) => {
    const neck = box?.neck
    if (neck?.gapMm === undefined || neck.leastGapMm === undefined) return []
    if (neck.gapMm >= neck.leastGapMm - 1e-6) return []
    const expected = writeLength(25.4 / 8, plan, 'up')
    return [
      {
        at: 'box.neck-gap',
        message: `with ${values.box?.['neck-gap']?.text} of daylight the top would come down on the neck under the bridge, and not sound; cut ${expected} of daylight into the neck`,
        expected: [expected],
      },
    ]
  },
}

/** A notch for the neck that leaves too little of the wall above the back. */
export const notchTooDeep: Check = {
  rule: 'notch-too-deep',
  find: ({values}, {box, ...plan}) => {
    const notch = box?.neck?.notch
    if (!notch?.isGiven || notch.deepestMm === undefined || notch.depthMm <= notch.deepestMm + 1e-6) return []
    const deepest = notch.deepestMm > 0 ? writeLength(notch.deepestMm, plan, 'down') : undefined
    const left = (notch.leftMm ?? 0) <= 0 ? 'nothing' : `only ${writeLength(notch.leftMm!, plan, 'down')}`
    return [
      {
        at: 'box.notch.depth',
        message: `a notch ${values.box?.notch?.depth?.text} deep leaves ${left} of the wall above the back${deepest ? `; ${deepest} is the deepest that holds` : ''}`,
        ...(deepest && {expected: [deepest]}),
      },
    ]
  },
}

/** A notch that the neck does not go into. */
export const notchTooNarrow: Check = {
  rule: 'notch-too-narrow',
  find: ({values}, {box, ...plan}) => {
    const neck = box?.neck
    const width = values.box?.notch?.width
    if (!neck || !width || width.mm >= neck.widthMm - plan.rulerMm - 1e-6) return []
    const expected = writeLength(neck.widthMm, plan, 'up')
    return [
      {
        at: 'box.notch.width',
        message: `a notch ${width.text} wide is too narrow for the neck, ${expected} wide where it meets the box`,
        expected: [expected],
        cause: 'neck.width',
      },
    ]
  },
}
