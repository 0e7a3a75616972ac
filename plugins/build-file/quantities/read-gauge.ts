import type {Limits} from '../kinds.ts'
import type {Gauge} from '../values.ts'
import {plainText} from './plain-text.ts'
import {readLength} from './read-length.ts'
import {misreading, quoted, type Reading, reading} from './reading.ts'

/** The diameters that strings are made in, in millimetres. */
const usual = {min: 0.1, max: 3}

/** Read a string's diameter, with `w` last where it is wound: `.017`, `.032w`, `0.43 mm`, `0.8 mm w`. */
export function readGauge(
  text: string,
  units: 'in' | 'mm',
  limits: Limits,
): Reading<Pick<Gauge, 'mm' | 'wound'>> {
  const plain = plainText(text)
  const [, size = '', wound] = /^(.*?)(?: ?(w))?$/i.exec(plain) ?? []
  const length = readLength(size, units)
  if (!length.ok) {
    const example = units === 'in' ? '.017 or .032w' : '0.43 or 0.8w'
    return misreading(
      'unreadable-gauge',
      `${quoted(text)} is not a gauge, as ${example} is`,
      woundLast(plain),
    )
  }
  const {mm} = length.value
  const {min = usual.min, max = usual.max} = limits
  if (mm >= min && mm <= max) return reading({mm, wound: wound !== undefined})
  const why = `${quoted(text)} is ${mm > max ? 'thicker' : 'thinner'} than any string (${min} to ${max} mm)`
  const likely = otherUnits(size).filter((spelling) => {
    const tried = readLength(spelling, units)
    return tried.ok && tried.value.mm >= min && tried.value.mm <= max
  })
  return misreading(
    'out-of-range',
    why,
    likely.map((spelling) => (wound ? `${spelling} w` : spelling)),
  )
}

/** The figure with each unit in turn, and as thousandths of an inch where it is a whole number. */
function otherUnits(size: string): string[] {
  const figure = size.replace(/ ?[a-z"']+\.?$/i, '')
  const thousandths = /^\d{1,3}$/.test(figure) ? [`.${figure.padStart(3, '0')} in`] : []
  return [`${figure} in`, `${figure} mm`, ...thousandths]
}

/** Move a `w` that stands before the unit to the end. */
function woundLast(plain: string): string[] {
  const [, figure, unit] = /^([\d./ ]+) ?w ?(in|mm)$/i.exec(plain) ?? []
  return figure ? [`${figure.trim()} ${unit} w`] : []
}
