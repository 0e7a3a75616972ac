import type {Plan} from '../../plan/shape/plan.ts'
import type {Part, SawnPieceShape} from '../../plan/shape/stock.ts'
import {type BenchStep, type Inline, lengthAlone} from '../kit.ts'
import {plainName} from './plain-name.ts'

type Strip = SawnPieceShape['strips'][number]
type Parts = ReadonlyMap<string, Part>

/** Say in order how to cut one piece: square it, rip its strips, cut them to length, put the rest back. */
export function pieceSteps(piece: SawnPieceShape, parts: Parts, plan: Plan): BenchStep[] {
  const at = (mm: number) => lengthAlone(mm, plan)
  const {lengthMm, widthMm, thicknessMm, fromMm, toMm, strips, offcuts} = piece
  const isSquared = fromMm > 0 || toMm < lengthMm
  const isWhole = strips.length === 1 && widthMm - strips[0]!.widthMm < 1e-6
  const back = offcuts.flatMap(({lengthMm: long, widthMm: wide}, i): Inline[] => [
    i > 0 ? '; ' : '',
    at(long),
    ' by ',
    at(wide),
  ])
  return [
    ...(isSquared
      ? [{does: ['Square the ends at ', at(fromMm), ' and ', at(toMm), ' from the end you measure from.']}]
      : []),
    ...ripSteps(strips, isWhole, parts, at),
    ...(back.length > 0
      ? [{does: ['Put back on the rack: ', ...back, '; ', at(thicknessMm), ' thick.']}]
      : []),
  ]
}

/** Strips alike that follow each other are one step. */
function ripSteps(
  strips: readonly Strip[],
  isWhole: boolean,
  parts: Parts,
  at: (mm: number) => Inline,
): BenchStep[] {
  const runs: {strip: Strip; key: string; count: number; first: number}[] = []
  let number = 1
  for (const strip of strips) {
    const key = JSON.stringify([
      strip.widthMm,
      strip.cuts.map((cut) => [parts.get(cut.partId)?.of, cut.lengthMm]),
    ])
    const last = runs.at(-1)
    if (last?.key === key) last.count++
    else runs.push({strip, key, count: 1, first: number})
    number += strip.cuts.length
  }
  return runs.map(({strip, count, first}) => {
    const rip: Inline[] = isWhole
      ? ['Cut to length: ']
      : count === 1
        ? ['Rip ', at(strip.widthMm), ' wide, and cut to length: ']
        : [`Rip ${count} strips `, at(strip.widthMm), ' wide, and cut each to length: ']
    return {does: [...rip, ...cutsInWords(strip, count, first, parts, at), '.']}
  })
}

function cutsInWords(
  {widthMm, cuts}: Strip,
  strips: number,
  first: number,
  parts: Parts,
  at: (mm: number) => Inline,
): Inline[] {
  const runs: {part: Part; count: number; from: number; widthMm: number}[] = []
  cuts.forEach((cut, i) => {
    const part = parts.get(cut.partId)!
    const last = runs.at(-1)
    if (last && last.part.of === part.of && last.part.lengthMm === part.lengthMm) last.count++
    else runs.push({part, count: 1, from: first + i, widthMm: cut.widthMm})
  })
  const several = (count: number) => count > 1 || strips > 1
  return runs.flatMap(({part, count, from, widthMm: own}, i): Inline[] => [
    i > 0 ? '; ' : '',
    numbersOf(strips, from, count),
    several(count) ? plainName(part.name) : part.name,
    ', ',
    at(part.lengthMm),
    count > 1 ? ' each' : '',
    ...(own < widthMm - 1e-6 ? [', ripped to ', at(own)] : []),
  ])
}

/** The numbers that cuts have in the drawing; those of several strips are told by the strips. */
function numbersOf(strips: number, from: number, count: number): string {
  if (strips > 1) return ''
  return count === 1 ? `${from} ` : `${from} ${count === 2 ? 'and' : 'to'} ${from + count - 1} `
}
