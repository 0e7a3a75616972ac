import {writeLength} from '../../build-file/quantities/write-length.ts'
import type {Ruler} from '../lengths.ts'
import {diameterOf} from './labels.ts'

// What is written on templates, which are read beside the wood: lengths stand with their unit, and with the plain
// minus, which every machine and font knows.

/** What each template is called. */
export const templateNames = {neck: 'neck', head: 'head', box: 'box top'} as const

/** Name a place and how far it lies from where is measured: `bridge line: 8 1/4 in`. */
export const placeFrom = (name: string, fromMm: number, ruler: Ruler): string =>
  `${name}: ${writeLength(fromMm, ruler)}`

/** Name a hole of the neck by what goes in and how wide it is. */
export const neckHoleName = (what: string, diameterMm: number, ruler: Ruler): string =>
  `${what} ${diameterOf(diameterMm, ruler)}`

/** Name a tuner's post with its hole, and its place: `D3 Ø 1/4, 2 in from the nut`. */
export function postPlace(
  name: string | undefined,
  holeMm: number | undefined,
  fromNutMm: number,
  ruler: Ruler,
): string {
  const hole = holeMm ? ` ${diameterOf(holeMm, ruler)}` : ''
  return `${name ?? 'post'}${hole}, ${writeLength(fromNutMm, ruler)} from the nut`
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
