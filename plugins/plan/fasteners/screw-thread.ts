import type {BuildValues} from '../../build-file/schema/schema.ts'
import {inch} from '../../tables/units.ts'
import type {Route} from './screw-route.ts'
import {screwSize, threadBites} from './screw-size.ts'

/** What must stay under a tip, and the thread that must bite, at least: common practice, no source. */
const tipKeepsMm = inch(1 / 8)
export const leastThread = {shanks: 2, mm: inch(1 / 4)}

/** How much of a cut-thread screw is thread, where the file does not say: common practice, no source. */
const threadPart = 2 / 3

/**
 * Say how much of a screw is thread, what of that bites, and between which lengths it would bite enough and not come
 * out (mm), where so much is under its head and so much room is left to its tip.
 */
export function threadOf(
  {size, length, thread}: NonNullable<BuildValues['screws']>[number],
  {holds}: Route,
  {underHeadMm, roomMm}: {underHeadMm: number; roomMm: number | undefined},
) {
  const lengthMm = length!.mm
  const ownThreadMm = Math.min(thread?.mm ?? lengthMm * threadPart, lengthMm)
  const endsMm = Math.min(lengthMm - underHeadMm, roomMm ?? Number.POSITIVE_INFINITY)
  const startsMm = Math.max(0, lengthMm - ownThreadMm - underHeadMm)
  const leastThreadMm = Math.max(leastThread.shanks * screwSize(size!.value).shankMm, leastThread.mm)
  const isAssumed = !thread || thread.assumed
  const bitingMm = isAssumed ? leastThreadMm / threadPart : leastThreadMm
  return {
    ...threadBites(holds.layers, [startsMm, endsMm]),
    lengthMm,
    ownThreadMm,
    isThreadTooLong: (thread?.mm ?? 0) > lengthMm + 1e-6,
    threadMm: Math.max(0, endsMm - startsMm),
    leastThreadMm,
    shortestMm: Math.max(underHeadMm + leastThreadMm, bitingMm),
    tipToFaceMm: roomMm === undefined ? undefined : underHeadMm + roomMm - lengthMm,
    longestMm: roomMm === undefined ? undefined : underHeadMm + roomMm - tipKeepsMm,
  }
}
