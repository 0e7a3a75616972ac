import type {Box} from '../shape/box.ts'

/**
 * Say how thick a block is (mm) that stands against a wall of the box where the jack goes through it; nothing where
 * none does. `face` is `tail end`, `side bass` or `side treble`.
 */
export function blockBehind(
  face: string,
  {stationMm, offMm}: {stationMm: number; offMm: number},
  {blocks = [], inside, tailMm, outside}: Box,
): number {
  if (!inside || !outside || tailMm === undefined) return 0
  const touchMm = 1
  const behind = blocks.find((block) =>
    face === 'tail end'
      ? tailMm - outside.sidesMm - (block.stationMm + block.lengthMm / 2) < touchMm &&
        Math.abs(offMm - block.offMm) < block.widthMm / 2
      : inside.widthMm / 2 - Math.sign(offMm) * block.offMm - block.widthMm / 2 < touchMm &&
        Math.abs(stationMm - block.stationMm) < block.lengthMm / 2,
  )
  return behind ? (face === 'tail end' ? behind.lengthMm : behind.widthMm) : 0
}
