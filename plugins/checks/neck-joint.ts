import {writeLength} from '../build-file/quantities/write-length.ts'
import {rule} from './rule.ts'

export const neckJointRules = {
  'above-top-disagrees': rule({
    severity: 'fault',
    what: 'A neck on top whose thickness and above-top put the playing face at two heights.',
    why: 'One of the two would be cut, and the bridge made for the other.',
    mend: 'Leave neck.above-top out, or make it agree with the thickness.',
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
  }),
  'neck-misses-box': rule({
    severity: 'fault',
    what: 'A neck that runs through the box, or ends at it, and lies wholly above its top.',
    why: 'Nothing of it would meet the box.',
    mend: 'Let it join on top, or say how far its playing face really stands above the top.',
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
  }),
  'neck-too-tall': rule({
    severity: 'fault',
    what: 'A neck that runs through and is taller than the inside of the box.',
    why: 'It would come out through the back.',
    mend: 'Make the neck thinner, or let it stand higher above the top.',
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
  }),
  'neck-touches-top': rule({
    severity: 'fault',
    what: 'A neck that runs through without daylight under the top.',
    why: 'A top that rests on the neck under the bridge does not sound.',
    mend: 'Cut the neck down where it passes under the top, and say how far in box.neck-gap.',
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
  }),
  'notch-too-deep': rule({
    severity: 'fault',
    what: 'A notch that leaves less than 1/8 in of the wall.',
    why: 'The wall breaks at the notch as soon as the strings pull. Common practice, no source.',
    mend: 'Let the neck in less deep.',
    find: ({values}, {box, ...plan}) => {
      const notch = box?.neck?.notch
      if (!notch?.isGiven || notch.deepestMm === undefined || notch.depthMm <= notch.deepestMm + 1e-6)
        return []
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
  }),
  'notch-too-narrow': rule({
    severity: 'fault',
    what: 'A notch narrower than the neck.',
    why: 'The neck would not go in.',
    mend: 'Widen the notch to the neck, or narrow the neck there.',
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
  }),
}
