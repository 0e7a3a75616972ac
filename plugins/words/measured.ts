import {fineRulers, writeLength} from '../build-file/quantities/write-length.ts'
import type {Habit} from '../plan/deviations.ts'
import {inch, poundForceN} from '../tables/units.ts'
import {keyInWords} from './keys.ts'

/**
 * Write a measured quantity with its unit, finer than the maker's ruler, since differences are finer than marks:
 * mm (to 1/64 in or 0.1 mm, and where `near` is under 1 mm to thousandths of an inch or 0.01 mm), N, cents, Hz or deg.
 */
export function writeMeasured(
  value: number,
  unit: string,
  {units, near = value}: {units: 'in' | 'mm'; near?: number},
): string {
  if (unit === 'mm') {
    const isFine = Math.abs(near) < 1
    const finest = {units, rulerMm: units === 'in' ? inch(0.001) : 0.01}
    return writeLength(value, isFine ? finest : fineRulers[units])
  }
  if (unit === 'N') return units === 'in' ? `${short(value / poundForceN)} lbf` : `${short(value)} N`
  if (unit === 'deg') return `${short(value)}°`
  const written = short(value)
  return unit === 'cents' && Math.abs(Number(written)) === 1 ? `${written} cent` : `${written} ${unit}`
}

const short = (value: number) => String(Number(value.toFixed(1)) + 0)

/** Write a force (N) as plain text: `19.8 lbf (88 N)`, or `88 N` in a millimetre build. NIST SP 811, appendix B. */
export function writeForce(n: number, units: 'in' | 'mm'): string {
  const newtons = `${n.toFixed(n < 10 ? 1 : 0)} N`
  return units === 'in' ? `${(n / poundForceN).toFixed(1)} lbf (${newtons})` : newtons
}

/** Say what a workshop does again and again, how many builds that rests on, and what to plan for it to come out right. */
export function habitInWords({path, unit, off, builds, same}: Habit, units: 'in' | 'mm'): string {
  const name = keyInWords(path)
  const by = writeMeasured(Math.abs(off), unit, {units})
  const [is, plan] = off > 0 ? ['over', 'less'] : ['under', 'more']
  return `${name.charAt(0).toUpperCase()}${name.slice(1)} comes out ${by} ${is} the plan, the middle of ${builds} builds, ${same} of them ${is}: ${unit === 'mm' || unit === 'deg' ? `plan ${by} ${plan} for it to come out as meant` : 'expect that of the next one'}.`
}
