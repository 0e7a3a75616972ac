import {writeLength} from '../build-file/quantities/write-length.ts'
import {tailNeeds} from '../words/neck.ts'
import {rule} from './rule.ts'

export const neckRules = {
  'neck-too-short': rule({
    severity: 'fault',
    what: 'A stick shorter than head, scale and what lies past the bridge.',
    why: 'The last anchor, or the end of the box, would have no neck under it.',
    mend: 'Start from a longer stick, or shorten head or scale.',
    find: ({values}, {neck, ...plan}) => {
      const {budget} = neck ?? {}
      if (budget?.spareMm === undefined || budget.spareMm >= -1e-6) return []
      const wanted = writeLength(budget.neededMm, plan, 'up')
      const short = writeLength(-budget.spareMm, plan, 'up')
      const joins = values.neck?.joins?.value ?? 'on top'
      const past = joins === 'end' ? 'the way to the box' : `what ${tailNeeds[budget.needs]} past the bridge`
      // On top it may end before the box does, as long as it holds the anchors.
      const isOnlyBox = joins === 'on top' && budget.holdsAnchors === true
      return [
        {
          at: 'neck.length',
          message: isOnlyBox
            ? `the neck ends ${short} before the box does; ${wanted} reaches to its tail edge`
            : `the neck is ${short} too short for head, scale and ${past}; ${wanted} would do`,
          expected: [wanted],
          ...(isOnlyBox && {severity: 'remark' as const}),
        },
      ]
    },
  }),
  'bow-too-large': rule({
    severity: 'warning',
    what: 'A neck that the strings bow by more than they stand above it.',
    why: 'Its middle sinks away until the strings are more than twice as high over it as they should be, and in time it sinks further.',
    mend: 'Make the neck thicker or wider, of stiffer wood, or use lighter strings.',
    find: (_, {neck, ...plan}) => {
      const tooLow = neck?.bow?.tooLow
      if (!tooLow) return []
      const text = tooLow.wouldDo && writeLength(tooLow.wouldDo.mm, plan)
      return [
        {
          at: tooLow.wouldDo?.path ?? 'neck.thickness',
          message: `the strings bow the neck by ${writeLength(tooLow.bowMm, plan)} at line ${tooLow.label}, more than the ${writeLength(tooLow.actionMm, plan)} they stand above it there; ${text ? `${tooLow.wouldDo!.path} ${text} would do` : 'a stiffer neck or lighter strings would do'}`,
          ...(text && {expected: [text]}),
        },
      ]
    },
  }),
  'laminations-too-thick': rule({
    severity: 'warning',
    what: 'Laminations that come to more than 1/8 in above the neck’s thickness.',
    why: 'A little is planed off after gluing; so much is most often a slip of the pen.',
    mend: 'Thin a layer, or make the neck as thick as its layers.',
    find: (_, {neck, ...plan}) => {
      const {laminationsMm, wantedMm, overMm, mostOverMm, wouldDo} = neck?.layup ?? {}
      if (laminationsMm === undefined || overMm === undefined || overMm <= mostOverMm! + 1e-6) return []
      const text = wouldDo && writeLength(wouldDo.mm, plan, 'up')
      return [
        {
          at: wouldDo?.path ?? 'neck.thickness',
          message: `the laminations come to ${writeLength(laminationsMm, plan)}, ${writeLength(overMm, plan)} more than the ${writeLength(wantedMm!, plan)} that the stick is to be${text ? `; ${text} here would do` : ''}`,
          cause: 'neck.thickness',
          ...(text && {expected: [text]}),
        },
      ]
    },
  }),
  'laminations-too-thin': rule({
    severity: 'fault',
    what: 'Laminations that do not come to the neck’s thickness.',
    why: 'Wood that is not there cannot be planed to size.',
    mend: 'Thicken a layer, or make the neck as thin as its layers.',
    find: (_, {neck, ...plan}) => {
      const {laminationsMm, wantedMm, overMm, wouldDo} = neck?.layup ?? {}
      if (laminationsMm === undefined || overMm === undefined || overMm >= -1e-6) return []
      const text = wouldDo && writeLength(wouldDo.mm, plan, 'up')
      return [
        {
          at: wouldDo?.path ?? 'neck.thickness',
          message: `the laminations come to ${writeLength(laminationsMm, plan)}, ${writeLength(-overMm, plan, 'up')} less than the ${writeLength(wantedMm!, plan)} that the stick is to be${text ? `; ${text} here would do` : ''}`,
          cause: 'neck.thickness',
          ...(text && {expected: [text]}),
        },
      ]
    },
  }),
  'round-over-too-large': rule({
    severity: 'fault',
    what: 'A round-over larger than the neck leaves, or one whose cutter has nothing to run on.',
    why: 'The cutter’s bearing runs on the flat side that is left; without it the cutter digs in.',
    mend: 'Take a smaller radius.',
    find: (_, {neck, ...plan}) => {
      const {radiusMm, flatMm, largestMm, bearingNeedsMm} = neck?.roundOver ?? {}
      if (radiusMm === undefined || largestMm === undefined || radiusMm <= largestMm + 1e-6) return []
      const found =
        flatMm! <= 0
          ? 'is larger than the neck is thick'
          : flatMm! >= bearingNeedsMm! - 1e-6
            ? 'is more than half the neck’s width'
            : `leaves ${writeLength(flatMm!, plan, 'down')} of flat side, and the cutter’s bearing needs ${writeLength(bearingNeedsMm!, plan, 'up')} to run on`
      const wouldDo = largestMm >= plan.rulerMm ? writeLength(largestMm, plan, 'down') : undefined
      return [
        {
          at: 'neck.round-over.radius',
          message: `a round-over of ${writeLength(radiusMm, plan)} ${found}${wouldDo ? `; ${wouldDo} is the largest that would do` : ''}`,
          ...(wouldDo && {expected: [wouldDo]}),
        },
      ]
    },
  }),
  'thin-under-nut': rule({
    severity: 'warning',
    what: 'Less than 3/8 in of wood under the nut’s groove.',
    why: 'The neck breaks where it is thinnest, and there it is bent most.',
    mend: 'Make the groove shallower, or the neck thicker.',
    find: (_, {neck, ...plan}) => {
      const {nutSeat} = neck ?? {}
      if (!nutSeat || nutSeat.leftMm >= nutSeat.leastMm - 1e-6) return []
      const least = writeLength(nutSeat.leastMm, plan, 'up')
      const deepest =
        nutSeat.deepestMm >= plan.rulerMm ? writeLength(nutSeat.deepestMm, plan, 'down') : undefined
      return [
        {
          at: 'nut.groove',
          message: `the nut’s groove leaves ${writeLength(nutSeat.leftMm, plan, 'down')} of wood under it, where ${least} keeps the neck from breaking there; ${deepest ? `a groove ${deepest} deep would do` : 'make the neck thicker'}`,
          ...(deepest && {expected: [deepest]}),
        },
      ]
    },
  }),
}
