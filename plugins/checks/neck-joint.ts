import * as words from '../words/findings/neck-joint.ts'
import {rule} from './rule.ts'

/** Write a neck that runs through a box 2 in deep. */
const through = (neck: string, box = '') =>
  `neck: {joins: through, width: 1 5/8, ${neck}}\nbox: {length: 10, width: 8, depth: 2${box}}`

/** Write a neck of hard maple that ends at a pine box, with a bridge on its top. */
const atTheEnd = (screws = '', neck = '') =>
  `scale: 24 1/4
strings: [{note: D3, gauge: .030w}, {note: A3, gauge: .020w}, {note: D4, gauge: .013}]
neck: {joins: end, length: 22 1/4, width: 1 5/8, thickness: 1, above-top: 1/4, wood: sugar maple${neck}}
head: {length: 6 1/4}
bridge: {on: top, height: 9/16}
action: {nut: 1/8, octave: 7/32}
box: {wood: eastern white pine, length: 10, width: 8, depth: 2 1/2, at: 16, end-block: {length: 3/4, width: 3, thickness: 1 3/4}}
${screws}`

export const neckJointRules = {
  'end-joint-weak': rule({
    severity: 'fault',
    what: 'A neck that ends at the box, held by glue on end grain that the strings ask too much of, or by screws without leverage.',
    why: 'The strings turn the neck about the upper edge of the box’s end. A glued end holds a quarter of the wood’s tensile strength at best (Wood Handbook, ch. 10), and no more than the wall’s own wood across its grain; a third of that is what to count on under a load that stays (common practice, no source).',
    mend: 'Screw the neck from inside, through an end block, below the middle of its end; or let it run through.',
    passes: atTheEnd(
      'screws: [{size: 8, length: 2, at: [16], off: [-3/8, 3/8], through: [block, side], into: neck}]',
    ),
    fails: atTheEnd('screws: []'),
    find: ({values}, {endJoint}) => {
      const {weak} = endJoint ?? {}
      if (!endJoint || !weak) return []
      const {idle, wouldDo} = weak
      const isNone = !idle && values.screws?.length === 0
      const noScrew = isNone ? 'screws' : 'neck.joins'
      const at = !idle ? noScrew : wouldDo ? `${idle}.down` : `${idle}.at`
      return [{at, ...endJoint, isScrewed: idle !== undefined, isNone, wouldDo}]
    },
    says: words.endJointWeak,
  }),
  'above-top-disagrees': rule({
    severity: 'fault',
    what: 'A neck on top whose thickness and above-top put the playing face at two heights.',
    why: 'One of the two would be cut, and the bridge made for the other.',
    mend: 'Leave neck.above-top out, or make it agree with the thickness.',
    passes: 'neck: {joins: on top, width: 1 5/8, thickness: 13/16, above-top: 13/16}',
    fails: 'neck: {joins: on top, width: 1 5/8, thickness: 13/16, above-top: 7/8}',
    find: ({values: {neck, box, fingerboard}}, plan) => {
      const {aboveTopMm, faceByThicknessMm} = plan.box?.neck ?? {}
      if (aboveTopMm === undefined || faceByThicknessMm === undefined) return []
      if (Math.abs(aboveTopMm - faceByThicknessMm) <= plan.rulerMm + 1e-6) return []
      // Of a neck whose thickness the file leaves out, the layers say it.
      const thickness = neck?.thickness?.assumed ? undefined : neck?.thickness
      return [
        {
          at: 'neck.above-top',
          cause: thickness ? 'neck.thickness' : 'neck.laminations',
          aboveTop: neck?.['above-top']?.text,
          thickness: thickness?.text,
          notch: box?.notch?.depth?.text,
          hasBoard: fingerboard?.thickness !== undefined,
          byThicknessMm: faceByThicknessMm,
        },
      ]
    },
    says: words.aboveTopDisagrees,
  }),
  'neck-misses-box': rule({
    severity: 'fault',
    what: 'A neck that runs through the box, or ends at it, and lies wholly above its top.',
    why: 'Nothing of it would meet the box.',
    mend: 'Let it join on top, or say how far its playing face really stands above the top.',
    passes: 'neck: {joins: end, width: 1 5/8, thickness: 1, above-top: 1/4}',
    fails: 'neck: {joins: end, width: 1 5/8, thickness: 1, above-top: 1}',
    find: ({values}, {box}) => {
      const neck = box?.neck
      const said = values.neck?.['above-top']
      if (!neck || neck.joins === 'on top' || !said || said.assumed || neck.backBelowTopMm > 1e-6) return []
      const {thicknessMm, faceLevelMm} = neck
      return [{at: 'neck.above-top', cause: 'neck.joins', aboveTop: said.text, thicknessMm, faceLevelMm}]
    },
    says: words.neckMissesBox,
  }),
  'neck-thin-inside': rule({
    severity: 'fault',
    what: 'A neck that runs through and is cut down inside the box to less than carries the strings.',
    why: 'There it is thinnest and bent most: it bows, or breaks, however thick it is outside. The wood may carry a third of its modulus of rupture for years.',
    mend: 'Leave less daylight under the top, or take a thicker stick.',
    passes: through('thickness: 1 1/4, above-top: 1/4, wood: black cherry', ', neck-gap: 3/16'),
    fails: through('thickness: 1 1/4, above-top: 1/4, wood: black cherry', ', neck-gap: 1/2'),
    find: ({values}, {neck, box}) => {
      const {tooThin, thicknessMm = 0, leastMm, because} = neck?.inside ?? {}
      if (!tooThin || !because) return []
      const {wouldDo} = tooThin
      const isSaid = values.neck?.inside !== undefined
      const at = wouldDo?.path ?? (isSaid ? 'neck.inside' : 'neck.thickness')
      const cause = isSaid ? 'neck.inside' : 'box.neck-gap'
      const gapMm = box?.neck?.gapMm
      return [{at, cause: cause === at ? undefined : cause, thicknessMm, gapMm, leastMm, because, wouldDo}]
    },
    says: words.neckThinInside,
  }),
  'neck-inside-disagrees': rule({
    severity: 'fault',
    what: 'A thickness inside the box and a daylight under the top that leave two different necks.',
    why: 'One of the two would be cut, and everything else made for the other.',
    mend: 'Leave one of them out, or make it agree.',
    passes: through('thickness: 1 1/4, inside: 15/16', ', neck-gap: 3/16'),
    fails: through('thickness: 1 1/4, inside: 3/4', ', neck-gap: 3/16'),
    find: ({values: {neck, box}}, plan) => {
      const {saidMm, byGapMm} = plan.box?.neck?.insideTwice ?? {}
      if (saidMm === undefined || byGapMm === undefined) return []
      if (Math.abs(saidMm - byGapMm) <= plan.rulerMm + 1e-6) return []
      const [inside, gap] = [neck?.inside?.text, box?.['neck-gap']?.text]
      return [{at: 'neck.inside', cause: 'box.neck-gap', inside, gap, byGapMm}]
    },
    says: words.neckInsideDisagrees,
  }),
  'neck-too-tall': rule({
    severity: 'fault',
    what: 'A neck that runs through and is taller than the inside of the box.',
    why: 'It would come out through the back.',
    mend: 'Make the neck thinner, or let it stand higher above the top.',
    passes: through('thickness: 1 1/4'),
    fails: through('thickness: 2 1/4'),
    find: ({values}, {box}) => {
      const {overBackMm = 0, tallestMm = 0, leastAboveTopMm = 0} = box?.neck ?? {}
      if (overBackMm <= 1e-6) return []
      const isLayered = values.neck?.laminations !== undefined
      return [
        {
          at: isLayered || tallestMm <= 0 ? 'neck.above-top' : 'neck.thickness',
          cause: 'box.depth',
          overBackMm,
          tallestMm,
          leastAboveTopMm,
          isLayered,
        },
      ]
    },
    says: words.neckTooTall,
  }),
  'neck-touches-top': rule({
    severity: 'fault',
    what: 'A neck that runs through without daylight under the top, or with less than the top sinks under the bridge in time.',
    why: 'A top that rests on the neck under the bridge does not sound.',
    mend: 'Cut the neck down where it passes under the top, and say how far in box.neck-gap.',
    passes: `bridge: {on: top}\n${through('thickness: 1 1/4', ', neck-gap: 3/16')}`,
    fails: `bridge: {on: top}\n${through('thickness: 1 1/4', ', neck-gap: 0')}`,
    find: ({values}, {box, neck}) => {
      const {gapMm, leastGapMm} = box?.neck ?? {}
      const needsMm = box?.lid?.needsGapMm ?? leastGapMm
      if (gapMm === undefined || needsMm === undefined || gapMm >= needsMm - 1e-6) return []
      const mostMm = gapMm + Math.max(neck?.inside?.spareMm ?? Number.POSITIVE_INFINITY, 0)
      return [{at: 'box.neck-gap', neckGap: values.box?.['neck-gap']?.text, needsMm, mostMm}]
    },
    says: words.neckTouchesTop,
  }),
  'notch-too-deep': rule({
    severity: 'fault',
    what: 'A notch that leaves less than 1/8 in of the wall.',
    why: 'The wall breaks at the notch as soon as the strings pull. Common practice, no source.',
    mend: 'Let the neck in less deep.',
    passes: through('thickness: 1 1/4', ', notch: {width: 1 5/8, depth: 1}'),
    fails: through('thickness: 1 1/4', ', notch: {width: 1 5/8, depth: 1 7/8}'),
    find: ({values}, {box}) => {
      const {isGiven, depthMm = 0, leftMm = 0, deepestMm} = box?.neck?.notch ?? {}
      if (!isGiven || deepestMm === undefined || depthMm <= deepestMm + 1e-6) return []
      return [{at: 'box.notch.depth', depth: values.box?.notch?.depth?.text, leftMm, deepestMm}]
    },
    says: words.notchTooDeep,
  }),
  'notch-deeper-than-neck': rule({
    severity: 'fault',
    what: 'A notch deeper than the neck that lies in it.',
    why: 'The neck would sink below where it is drawn, and with it the strings; or hang in the air.',
    mend: 'Cut the notch as deep as the neck lies below the box’s edge.',
    passes: through('thickness: 1 1/4', ', notch: {width: 1 5/8, depth: 1 1/4}'),
    fails: through('thickness: 1 1/4', ', notch: {width: 1 5/8, depth: 1 5/16}'),
    find: ({values}, {box, rulerMm}) => {
      const {isGiven, depthMm = 0, neckMm = 0} = box?.neck?.notch ?? {}
      if (!isGiven || depthMm <= neckMm + rulerMm + 1e-6) return []
      return [{at: 'box.notch.depth', depth: values.box?.notch?.depth?.text, neckMm}]
    },
    says: words.notchDeeperThanNeck,
  }),
  'notch-too-narrow': rule({
    severity: 'fault',
    what: 'A notch narrower than the neck.',
    why: 'The neck would not go in.',
    mend: 'Widen the notch to the neck, or narrow the neck there.',
    passes: through('thickness: 1 1/4', ', notch: {width: 1 5/8, depth: 1}'),
    fails: through('thickness: 1 1/4', ', notch: {width: 1 1/2, depth: 1}'),
    find: ({values}, {box, rulerMm}) => {
      const neck = box?.neck
      const width = values.box?.notch?.width
      const neckWidthMm = Math.max(neck?.widthMm ?? 0, neck?.notch?.tailWidthMm ?? 0)
      if (!neck || !width || width.mm >= neckWidthMm - rulerMm - 1e-6) return []
      return [{at: 'box.notch.width', cause: 'neck.width', width: width.text, neckWidthMm}]
    },
    says: words.notchTooNarrow,
  }),
}
