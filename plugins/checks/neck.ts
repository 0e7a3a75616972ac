import {writeLength} from '../build-file/quantities/write-length.ts'
import type {Check} from './rule.ts'

/** A stick too short for head, scale and what anchors and box need past the bridge. */
export const neckTooShort: Check = {
  rule: 'neck-too-short',
  find: ({values}, {neck, ...plan}) => {
    const {budget} = neck ?? {}
    if (budget?.spareMm === undefined || budget.spareMm >= -1e-6) return []
    const wanted = writeLength(budget.neededMm, plan, 'up')
    const short = writeLength(-budget.spareMm, plan, 'up')
    const joins = values.neck?.joins?.value ?? 'on top'
    const past = joins === 'end' ? 'the way to the box' : `what ${budget.needs} past the bridge`
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
}

/** A neck that the strings bow by more than they stand above it. */
export const bowTooLarge: Check = {
  rule: 'bow-too-large',
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
}

/** Laminations that come to more above the neck's thickness than there is to plane off. */
export const laminationsTooThick: Check = {
  rule: 'laminations-too-thick',
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
}

/** Laminations that do not come to the neck's thickness. */
export const laminationsTooThin: Check = {
  rule: 'laminations-too-thin',
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
}

/** A round-over larger than the neck, or one that leaves the cutter's bearing nothing to run on. */
export const roundOverTooLarge: Check = {
  rule: 'round-over-too-large',
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
}

/** Too little wood under the nut's groove. */
export const thinUnderNut: Check = {
  rule: 'thin-under-nut',
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
}
