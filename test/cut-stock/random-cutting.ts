import type {Saw, StockPart, StockPiece} from '../../plugins/cut-stock/cut-stock.ts'

/** A small repeatable source of numbers from 0 to 1 (a multiply-and-shift mixer). */
export function numbers(seed: number): () => number {
  let state = seed * 7919 + 13
  return () => {
    state = (state + 0x6d2b79f5) | 0
    let mixed = Math.imul(state ^ (state >>> 15), 1 | state)
    mixed = (mixed + Math.imul(mixed ^ (mixed >>> 7), 61 | mixed)) ^ mixed
    return ((mixed ^ (mixed >>> 14)) >>> 0) / 2 ** 32
  }
}

export interface Cutting {
  parts: StockPart[]
  pieces: StockPiece[]
  saw: Saw
}

/** Make up a two-stage cutting of mixed widths, lengths, thicknesses and woods; many have parts that fit nowhere. */
export function randomCutting(seed: number, [fewest, most]: readonly [number, number] = [4, 11]): Cutting {
  const random = numbers(seed)
  const whole = (from: number, to: number) => from + Math.floor(random() * (to - from + 1))
  const one = <T>(of: readonly T[]): T => of[whole(0, of.length - 1)]!
  const widths = Array.from({length: whole(1, 3)}, () => whole(10, 59))
  const count = whole(fewest, most)
  const lengths = Array.from({length: whole(1, count)}, () => whole(40, 539))
  const isScarce = random() < 0.4
  const parts = Array.from({length: count}, (_, i) => ({
    id: `part ${i + 1}`,
    wood: random() < 0.15 ? 'any' : random() < 0.75 ? 'ash' : 'beech',
    lengthMm: random() < 0.5 ? one(lengths) : whole(40, 539),
    widthMm: one(widths),
    thicknessMm: random() < 0.7 ? 10 : 18,
  }))
  const pieces = Array.from({length: whole(1, 5)}, (_, i) => ({
    id: `piece ${i + 1}`,
    wood: random() < 0.7 ? 'ash' : 'beech',
    lengthMm: isScarce ? whole(300, 599) : one([600, 900, 1200]),
    widthMm: one([40, 65, 100]),
    thicknessMm: random() < 0.5 ? 12 : 19,
  }))
  return {parts, pieces, saw: {kerfMm: one([0, 1, 3, 3.175]), trimMm: one([0, 0, 10])}}
}
