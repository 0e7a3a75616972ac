import * as words from '../words/findings/neck.ts'
import {rule} from './rule.ts'

export const neckRules = {
  'neck-too-short': rule({
    severity: 'fault',
    what: 'A stick shorter than head, scale and what lies past the bridge.',
    why: 'The last anchor, or the end of the box, would have no neck under it.',
    mend: 'Start from a longer stick, or shorten head or scale.',
    passes: 'head: {length: 6}\nanchors: {at: 26}\nneck: {length: 33, width: 1 5/8, thickness: 13/16}',
    fails: 'head: {length: 6}\nanchors: {at: 26}\nneck: {length: 31, width: 1 5/8, thickness: 13/16}',
    find: ({values}, {neck}) => {
      const {budget} = neck ?? {}
      if (budget?.spareMm === undefined || budget.spareMm >= -1e-6) return []
      const joins = values.neck?.joins?.value ?? 'on top'
      // On top it may end before the box does, as long as it holds the anchors.
      const onlyTheBox = joins === 'on top' && budget.holdsAnchors === true
      return [
        {
          at: 'neck.length',
          severity: onlyTheBox ? 'remark' : undefined,
          neededMm: budget.neededMm,
          shortMm: -budget.spareMm,
          onlyTheBox,
          needs: joins === 'end' ? undefined : budget.needs,
        },
      ]
    },
    says: words.neckTooShort,
  }),
  'bow-too-large': rule({
    severity: 'warning',
    what: 'A neck that the strings bow, creep included, by more than they stand above it, or under frets by more than 1/16 in.',
    why: 'A load that stays doubles the bow in time, and the middle of the neck sinks away under the strings. What frets bear is common practice, no source.',
    mend: 'Make the neck thicker or wider, of stiffer wood, or use lighter strings.',
    passes: 'neck: {width: 1 1/2, thickness: 3/4, wood: black cherry}',
    fails: 'neck: {width: 1 1/2, thickness: 7/16, wood: black cherry}',
    find: (_, {neck}) => {
      const {tooLow, tooHollow} = neck?.bow ?? {}
      const wouldDo = (tooLow ?? tooHollow)?.wouldDo
      return tooLow || tooHollow
        ? [{...tooHollow, ...tooLow, at: wouldDo?.path ?? 'neck.thickness', wouldDo}]
        : []
    },
    says: words.bowTooLarge,
  }),
  'laminations-too-thick': rule({
    severity: 'warning',
    what: 'Laminations that come to more than 1/8 in above the neck’s thickness.',
    why: 'A little is planed off after gluing; so much is most often a slip of the pen.',
    mend: 'Thin a layer, or make the neck as thick as its layers.',
    passes: 'neck: {width: 1 5/8, thickness: 3/4, laminations: [{wood: white ash, thickness: 13/16}]}',
    fails: 'neck: {width: 1 5/8, thickness: 3/4, laminations: [{wood: white ash, thickness: 1}]}',
    find: (_, {neck}) => {
      const {laminationsMm, wantedMm, overMm, mostOverMm, wouldDo} = neck?.layup ?? {}
      if (laminationsMm === undefined || overMm === undefined || overMm <= mostOverMm! + 1e-6) return []
      const at = wouldDo?.path ?? 'neck.thickness'
      return [{at, cause: 'neck.thickness', laminationsMm, overMm, wantedMm: wantedMm!, wouldDo}]
    },
    says: words.laminationsOff,
  }),
  'laminations-too-thin': rule({
    severity: 'fault',
    what: 'Laminations that do not come to the neck’s thickness.',
    why: 'Wood that is not there cannot be planed to size.',
    mend: 'Thicken a layer, or make the neck as thin as its layers.',
    passes: 'neck: {width: 1 5/8, thickness: 3/4, laminations: [{wood: white ash, thickness: 3/4}]}',
    fails: 'neck: {width: 1 5/8, thickness: 3/4, laminations: [{wood: white ash, thickness: 5/8}]}',
    find: (_, {neck}) => {
      const {laminationsMm, wantedMm, overMm, wouldDo} = neck?.layup ?? {}
      if (laminationsMm === undefined || overMm === undefined || overMm >= -1e-6) return []
      const at = wouldDo?.path ?? 'neck.thickness'
      return [{at, cause: 'neck.thickness', laminationsMm, overMm, wantedMm: wantedMm!, wouldDo}]
    },
    says: words.laminationsOff,
  }),
  'round-over-too-large': rule({
    severity: 'fault',
    what: 'A round-over larger than the neck leaves, or one whose cutter has nothing to run on.',
    why: 'The cutter’s bearing runs on the flat side that is left; without it the cutter digs in.',
    mend: 'Take a smaller radius.',
    passes: 'neck: {width: 1 5/8, thickness: 13/16, round-over: 1/2}',
    fails: 'neck: {width: 1 5/8, thickness: 13/16, round-over: 3/4}',
    find: (_, {neck}) => {
      const {radiusMm, flatMm, largestMm, bearingNeedsMm} = neck?.roundOver ?? {}
      if (radiusMm === undefined || largestMm === undefined || radiusMm <= largestMm + 1e-6) return []
      return [
        {
          at: 'neck.round-over.radius',
          radiusMm,
          flatMm: flatMm!,
          bearingNeedsMm: bearingNeedsMm!,
          largestMm,
        },
      ]
    },
    says: words.roundOverTooLarge,
  }),
  'board-over-box': rule({
    severity: 'fault',
    what: 'A fingerboard that goes on over the box, on a neck that runs through it.',
    why: 'There the neck is cut down so that the top goes over it, and the end of the board would be sawn off.',
    mend: 'Let the fingerboard stop at the box.',
    passes:
      'scale: 24\nneck: {width: 1 5/8, thickness: 1, joins: through}\nbox: {length: 10, width: 7, depth: 2, at: 16}\nfingerboard: {thickness: 1/4, to: 16}',
    fails:
      'scale: 24\nneck: {width: 1 5/8, thickness: 1, joins: through}\nbox: {length: 10, width: 7, depth: 2, at: 16}\nfingerboard: {thickness: 1/4, to: 18}',
    find: (_, {neck}) => {
      const {boardOverBox: over} = neck ?? {}
      return over ? [{...over, at: 'fingerboard.to', cause: 'box.at'}] : []
    },
    says: words.boardOverBox,
  }),
  'board-radius-too-small': rule({
    severity: 'fault',
    what: 'A fingerboard rounded so much that nothing is left of its edges: a radius below half its width, or near it.',
    why: 'A circle is no wider than twice its radius, and the board is only so thick.',
    mend: 'Take a larger radius, or a thicker board.',
    passes: 'fingerboard: {thickness: 1/4, radius: 12}\nneck: 1 5/8 x 1',
    fails: 'fingerboard: {thickness: 1/4, radius: 3/4}\nneck: 1 5/8 x 1',
    find: (_, {neck}) => {
      const {radiusMm = 0, wouldDoMm} = neck?.boardRadius ?? {}
      return wouldDoMm === undefined
        ? []
        : [{at: 'fingerboard.radius', cause: 'neck.width', radiusMm, wouldDoMm}]
    },
    says: words.boardRadiusTooSmall,
  }),
  'thin-under-nut': rule({
    severity: 'warning',
    what: 'Less than 3/8 in of wood under the nut’s groove.',
    why: 'The neck breaks where it is thinnest, and there it is bent most.',
    mend: 'Make the groove shallower, or the neck thicker.',
    passes: 'nut: {kind: rod, diameter: 3/16, groove: 1/16}',
    fails: 'nut: {kind: rod, diameter: 1/2, groove: 7/16}',
    find: (_, {neck}) => {
      const {nutSeat} = neck ?? {}
      return nutSeat && nutSeat.leftMm < nutSeat.leastMm - 1e-6 ? [{...nutSeat, at: 'nut.groove'}] : []
    },
    says: words.thinUnderNut,
  }),
}
