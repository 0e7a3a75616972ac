import type {BlockContent} from 'mdast'
import {cutDiagram} from '../drawings/cut-diagram.ts'
import {pageSvg} from '../drawings/writers/svg.ts'
import type {Plan} from '../plan/plan.ts'
import type {CutPiece, Cuts} from '../plan/stock/cut-list.ts'
import type {Part} from '../plan/stock/part.ts'
import {partName, plainName} from '../words/cut-list.ts'
import {unitWords} from '../words/drawings/labels.ts'
import {inWords, number} from '../words/quantities.ts'
import {type BenchStep, figure, type Inline, note, paragraph, steps, subHeading} from './kit.ts'
import {lengthAlone} from './measures.ts'

/** So many drawings a page; more ways of cutting are told in words alone, and after so many not at all. */
const mostDrawn = 12
const mostTold = 60

/** Show every piece with its cuts, in the order to make them; pieces cut alike are shown once. */
export function cutPieces(cuts: Cuts, plan: Plan): BlockContent[] {
  const alike = alikePieces(cuts)
  const rest = alike.slice(mostTold).flat().length
  return [
    ...alike.slice(0, mostTold).flatMap((pieces, at) => cutAlike(pieces, cuts, plan, at)),
    ...(rest > 0
      ? [
          paragraph(
            `${number(rest, 0)} more pieces are cut in other ways; the plan of this page lists them all.`,
          ),
        ]
      : []),
    ...(cuts.pieces.length > 0 && cuts.parts.some(({isSmall}) => isSmall)
      ? [note('Small parts stay on their strip, where it can be held, until everything else is done.')]
      : []),
  ]
}

function cutAlike(pieces: readonly CutPiece[], cuts: Cuts, plan: Plan, at: number): BlockContent[] {
  const piece = pieces[0]!
  const several = pieces.length > 1
  const parts = new Map(
    cuts.parts.map((part) => {
      const name = partName(part.called)
      return [part.id, {...part, name: several ? plainName(name) : name}]
    }),
  )
  const ids = pieces.map(({id}) => id)
  const all =
    ids.length > 8 ? `${inWords([...ids.slice(0, 3), `${number(ids.length - 3, 0)} more`])}` : inWords(ids)
  return [
    subHeading(`${piece.id}, ${piece.wood}`),
    ...[...new Set(pieces.map(known))].flatMap((said) => (said ? [note(said)] : [])),
    ...(several ? [paragraph(`Cut ${number(pieces.length, 0)} pieces like this: ${all}.`)] : []),
    ...(at < mostDrawn ? [drawn(piece, parts, plan, at)] : []),
    steps(pieceSteps(piece, parts, plan)),
  ]
}

/** Say what was noted of a piece, and since when it is there: `Hatch board; bought 2026-04-02.` */
function known({remark, bought}: CutPiece): string {
  const said = [remark, bought && `bought ${bought}`].filter(Boolean).join('; ')
  return said && `${said[0]!.toUpperCase()}${said.slice(1)}.`
}

function drawn(piece: CutPiece, parts: Parts, plan: Plan, at: number): BlockContent {
  const names = new Map([...parts].map(([id, {name}]) => [id, name]))
  const drawing = cutDiagram(piece, names, plan)
  return figure(pageSvg(drawing, `cuts-${at + 1}`), {
    alt: drawing.says,
    caption: [`${piece.id} from above, measured from its upper end; ${unitWords(plan)}.`],
  })
}

/** Put pieces together that are the same wood and size, and are cut alike, whatever the names of their parts. */
function alikePieces({pieces, parts}: Cuts): CutPiece[][] {
  const of = new Map(parts.map((part) => [part.id, part.of]))
  const groups = new Map<string, CutPiece[]>()
  for (const piece of pieces) {
    const {wood, lengthMm, widthMm, thicknessMm, fromMm, strips} = piece
    const cut = strips.map(({widthMm: width, cuts}) => [
      width,
      cuts.map(({partId, lengthMm: long}) => [of.get(partId), long]),
    ])
    const key = JSON.stringify([wood, lengthMm, widthMm, thicknessMm, fromMm, cut])
    groups.set(key, [...(groups.get(key) ?? []), piece])
  }
  return [...groups.values()]
}

type Strip = CutPiece['strips'][number]
/** Parts by their ids, as they are named here. */
type Parts = ReadonlyMap<string, NamedPart>

interface NamedPart extends Part {
  name: string
}

/** Say in order how to cut one piece: square it, rip its strips, cut them to length, put the rest back. */
function pieceSteps(piece: CutPiece, parts: Parts, plan: Plan): BenchStep[] {
  const at = (mm: number, rounding?: 'up') => lengthAlone(mm, plan, rounding)
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
  at: (mm: number, rounding?: 'up') => Inline,
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
    return {does: [...rip, ...cutsInWords(strip, {count, first}, parts, at), '.']}
  })
}

function cutsInWords(
  {widthMm, cuts}: Strip,
  {count: strips, first}: {count: number; first: number},
  parts: Parts,
  at: (mm: number, rounding?: 'up') => Inline,
): Inline[] {
  const runs: {part: NamedPart; count: number; from: number; widthMm: number}[] = []
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
    at(part.lengthMm, 'up'),
    count > 1 ? ' each' : '',
    ...(own < widthMm - 1e-6 ? [', ripped to ', at(own)] : []),
  ])
}

/** The numbers that cuts have in the drawing; those of several strips are told by the strips. */
function numbersOf(strips: number, from: number, count: number): string {
  if (strips > 1) return ''
  return count === 1 ? `${from} ` : `${from} ${count === 2 ? 'and' : 'to'} ${from + count - 1} `
}
