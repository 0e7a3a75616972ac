import {writeLength} from '../../build-file/quantities/write-length.ts'
import type {Placed} from '../../plan/strings/tuners.ts'
import type {Ruler} from '../lengths.ts'
import {behind, type Handed, toSide} from '../sides.ts'
import {diameterOf} from './labels.ts'

// What is written on templates, which are read beside the wood: lengths stand with their unit.

/** What each template is called. */
export const templateNames = {neck: 'neck', head: 'head', box: 'box top', radius: 'radius gauge'} as const

/** Name a place and how far it lies from where is measured: `bridge line: 8 1/4 in`. */
export const placeFrom = (name: string, fromMm: number, ruler: Ruler): string =>
  `${name}: ${writeLength(Math.abs(fromMm), ruler)}${fromMm < 0 ? ` ${behind}` : ''}`

/** Name a hole of the neck by what goes in and how wide it is. */
export const neckHoleName = (what: string, diameterMm: number, ruler: Ruler): string =>
  `${what} ${diameterOf(diameterMm, ruler)}`

/** Name a tuner's post with its hole, and its place: `D3 Ø 1/4, 2 in from the nut, 7/16 in to the bass side`. */
export function postPlace(
  {name, stationMm, offMm}: Placed,
  holeMm: number | undefined,
  plan: Ruler & Handed,
): string {
  const hole = holeMm ? ` ${diameterOf(holeMm, plan)}` : ''
  const off = offMm === 0 ? '' : `${writeLength(Math.abs(offMm), plan)} `
  return `${name ?? 'post'}${hole}, ${writeLength(-stationMm, plan)} from the nut, ${off}${toSide(offMm, plan)}`
}

/** What is measured on the box's top. */
export const boxNames = {block: 'block beneath', soundHole: 'sound hole', hole: 'hole'} as const

/** The bars to check a printer by. */
export const barNames = {metric: '100 mm', inches: '4 in'} as const

/** What the foot of each sheet says. */
export const footWords = {
  bars: 'Print at 100 %, then measure these bars.',
  joins: 'Where sheets join, lay cross on cross of the same name.',
  cut: 'cut',
  slot: 'knife or saw',
  pencil: 'pencil',
  punch: 'centre punch',
  drill: 'drill',
  fullSize: (template: string) => `${template}, full size`,
  sheet: (sheet: number, sheets: number) => `sheet ${sheet} of ${sheets}`,
} as const
