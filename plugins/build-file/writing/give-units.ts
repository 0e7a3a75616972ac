import {plainLines} from '../reading/front-matter.ts'
import type {Build} from '../schema/build.ts'
import {leavesOf} from '../schema/path.ts'
import type {Gauge, Length} from '../schema/values.ts'

const bare = /^[-+−\d\s./⁄¼-¾⅐-⅞]+$/

/** Write its unit behind every bare length and gauge of a build's text, so that another `units` changes no size. */
export function giveUnits(source: string, build: Build, units: 'in' | 'mm'): string {
  const lines = plainLines(source).split('\n')
  // From the end, so that no place moves before its turn.
  const lengths = leavesOf(build.values)
    .flatMap(([, value]) => ('mm' in value ? [value as Length | Gauge] : []))
    .sort((a, b) => b.place.line - a.place.line || b.place.column - a.place.column)
  for (const value of lengths) {
    const {line, column, endLine, endColumn} = value.place
    if (line !== endLine) continue
    const text = lines[line - 1]!
    const written = text.slice(column - 1, endColumn - 1).replace(value.text, withUnit(value, units))
    lines[line - 1] = text.slice(0, column - 1) + written + text.slice(endColumn - 1)
  }
  return lines.join('\n')
}

/** Write a length or gauge with its unit, where it is bare: `.030w` → `.030 in w`. */
export function withUnit(value: Length | Gauge, units: 'in' | 'mm'): string {
  const isWound = 'wound' in value && value.wound
  const amount = isWound ? value.text.replace(/\s*w$/i, '') : value.text
  return bare.test(amount) ? `${amount} ${units}${isWound ? ' w' : ''}` : value.text
}
