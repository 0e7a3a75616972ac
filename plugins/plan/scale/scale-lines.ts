import type {BuildValues} from '../../build-file/schema.ts'
import {neckTaper} from '../neck-taper.ts'
import {neckWidthAt} from '../neck-width-at.ts'
import type {PlanPart} from '../part.ts'
import type {Line, Scale} from '../shape/scale.ts'
import {layDots} from './lay-dots.ts'
import {layLines} from './lay-lines.ts'
import {linePattern} from './line-pattern.ts'
import {type StringSpread, stringSpread} from './string-spread.ts'

type ScaleValues = NonNullable<BuildValues['scale']>

/**
 * Lay out the string length: its lines as players number them, where each falls on the maker's ruler, how wide the
 * neck is and where the strings cross there, and the dots. Lines are absent where pattern or temperament do not rise.
 */
export const scaleLines: PlanPart = ({values, units, rulerMm}, soFar) => {
  const {scale} = values
  const spread = stringSpread(values)
  if (!scale && !spread) return {}
  const lengthMm = scale?.length?.mm
  const isFretted = scale?.fretted?.value === true
  const kept = {...soFar.scale, fretted: isFretted, ...patternWords(scale ?? {}), ...spread}
  const pattern = scale && patternOf(scale)
  const steps = scale && stepsOf(scale)
  if (lengthMm === undefined || !pattern || !steps) return {scale: {...kept, ...(lengthMm && {lengthMm})}}

  const lines = layLines(pattern, {lengthMm, units, rulerMm, ...(steps !== 'equal' && {steps})})
  const taper = neckTaper(values)
  for (const line of lines) {
    const widthMm = taper && neckWidthAt(line.fromNutMm, taper)
    if (widthMm !== undefined) line.widthMm = widthMm
    if (spread) line.stringOffMm = stringsAt(line.fromNutMm / lengthMm, spread)
    const {atMm, tailMm = Number.POSITIVE_INFINITY} = soFar.box ?? {}
    if (atMm !== undefined) line.overBox = line.fromNutMm >= atMm && line.fromNutMm <= tailMm
  }
  const dots =
    scale.dots &&
    layDots(
      scale.dots.map((dot) => dot.label),
      lines,
      isFretted,
    )
  const bridgeFrontMm = lengthMm - (values.bridge?.foot?.mm ?? 0) / 2
  return {scale: {...kept, lengthMm, bridgeFrontMm, lines, ...worst(lines), ...(dots && {dots})}}
}

function patternOf({pattern, lines}: ScaleValues) {
  if (!pattern || !lines) return undefined
  return linePattern(Array.isArray(pattern) ? pattern.map(({value}) => value) : pattern.value, lines.value)
}

function stepsOf({temperament}: ScaleValues): readonly number[] | 'equal' | undefined {
  if (!Array.isArray(temperament)) return temperament?.value
  const cents = temperament.map((step) => step.cents)
  const rises = cents.length === 12 && cents.every((step, i) => step > (cents[i - 1] ?? 0))
  return rises ? cents : undefined
}

function patternWords({pattern, temperament}: ScaleValues): Pick<Scale, 'pattern' | 'temperament'> {
  const list = (items: readonly {text: string}[]) => items.map(({text}) => text).join(', ')
  return {
    ...(pattern && {pattern: Array.isArray(pattern) ? list(pattern) : pattern.value}),
    ...(temperament && {temperament: Array.isArray(temperament) ? list(temperament) : temperament.value}),
  }
}

/** Where the strings cross at a part of the way from nut to bridge. */
const stringsAt = (part: number, {nutOffMm, bridgeOffMm}: StringSpread): number[] =>
  nutOffMm.map((offMm, i) => offMm + part * (bridgeOffMm[i]! - offMm))

function worst(lines: readonly Line[]) {
  if (lines.length === 0) return {}
  return {worstMarkErrorCents: Math.max(...lines.map((line) => Math.abs(line.markErrorCents)))}
}
