import type {BlockContent} from 'mdast'
import {wiringDrawing} from '../drawings/plots/wiring.ts'
import type {Settled} from '../plan/kit/settled.ts'
import type {Plan} from '../plan/plan.ts'
import {number} from '../words/quantities.ts'
import {wallNames} from '../words/sides.ts'
import {facts, figure, figures, type Inline, list, source, subHeading} from './kit.ts'
import {length} from './measures.ts'

/** Say where pickup and jack go, what is wired to what, and what to test before the box is closed; battery power at most. */
export function wiring(plan: Plan, {values}: Settled): BlockContent[] {
  const {pickup} = plan
  if (!pickup) return []
  const kind = values.pickup?.kind?.value ?? 'piezo'
  const says = drawnInWords[kind]
  return [
    subHeading('Pickup and jack'),
    facts(wiringPlaces(plan, values.pickup?.diameter?.text)),
    figure(wiringDrawing({id: 'wiring', kind, says}), {
      alt: says,
      caption: ['Wiring, not to scale. Nothing here is powered from the mains.'],
    }),
    list([...connections(kind), ...tests(kind === 'piezo', values.box?.top?.held?.value)]),
    ...corner(plan),
  ]
}

const drawnInWords = {
  piezo: 'The disc’s middle is wired to the jack’s tip, its brass rim to the jack’s sleeve.',
  magnetic:
    'The coil’s live end is wired to the jack’s tip, its ground end and a wire from the strings to the jack’s sleeve.',
  microphone: 'The microphone’s live wire goes to the jack’s tip, its ground to the jack’s sleeve.',
} as const

function connections(kind: string): string[] {
  if (kind === 'magnetic')
    return [
      'Coil’s live end to the tip; its ground end, the cable’s screen and a wire from the bridge or the anchors to the sleeve: a hum that goes when the strings are touched is a ground wire that does not reach them.',
    ]
  if (kind === 'microphone')
    return [
      'Signal to the tip, ground and screen to the sleeve; power, where it asks for any, from a battery in the box.',
    ]
  return [
    'Middle of the disc (the ceramic) to the tip; brass rim to the sleeve; a screened wire keeps hum out, its screen on the sleeve too.',
    'The strings need no ground wire with a piezo disc.',
    'Solder quickly and with little heat: the ceramic cracks. Bed the disc in glue or soft putty under the top, ceramic side down, so that it does not rattle.',
  ]
}

function tests(isPiezo: boolean, held: string | undefined): string[] {
  return [
    'Before the box is closed: plug in, tap by the pickup and hear it; turn and wiggle the plug; measure tip to sleeve with the plug out' +
      (isPiezo
        ? ', which reads open, not shorted.'
        : ', which reads what its sheet says, neither open nor shorted.'),
    held === 'glued'
      ? 'Then tie the wires down, and photograph them: the top is glued.'
      : 'Then tie the wires down where nothing can rattle.',
  ]
}

function corner(plan: Plan): BlockContent[] {
  const {cornerHz, cornerLowHz, capacitanceNf} = plan.pickup ?? {}
  if (cornerHz === undefined || cornerLowHz === undefined || capacitanceNf === undefined) return []
  return [
    figures('Figures: what the disc wants to be plugged into', [
      list([
        `${number(capacitanceNf, 1)} nF into 1 MΩ, as an instrument input has it, fades below ${number(cornerHz, 1)} Hz: nothing is lost.`,
        `Into 50 kΩ it fades below ${number(cornerLowHz, 0)} Hz, and the bass strings sound thin: put a battery-powered buffer between.`,
      ]),
      source(
        'corner of a source in series with its capacitance, 1/(2πRC): OpenStax University Physics vol. 2, 15.6.',
      ),
    ]),
  ]
}

/** Say where pickup and jack go, the thread that its wall asks for and the room behind it; `written` is the disc's size as the file has it. */
function wiringPlaces(plan: Plan, written = ''): [string, ...Inline[]][] {
  const {pickup, box} = plan
  const {stationMm, diameterMm, under, jack} = pickup ?? {}
  const at = (mm: number) => length(mm, plan)
  const rows: [string, ...Inline[]][] = [
    [
      'Pickup',
      `${pickup?.kind ?? 'pickup'}`,
      ...(diameterMm === undefined
        ? []
        : [', ', /[a-z]/i.test(written) ? written : at(diameterMm), ' across']),
      ...(under ? [`, under the ${under}`] : []),
      ...(stationMm === undefined ? [] : [', its middle ', at(stationMm), ' from the nut']),
    ],
  ]
  if (!jack) return rows
  const {stationMm: jackMm, downMm, wallMm, leastThreadMm, threadMm, roomMm, proposed, face} = jack
  const along =
    jackMm !== undefined && box?.atMm !== undefined && face !== 'tail end'
      ? [', ', at(jackMm - box.atMm), ' from the box’s head-side edge']
      : []
  const down = downMm === undefined ? [] : [', ', at(downMm), ' below the top']
  rows.push([
    'Jack',
    `in the ${wallNames[face] ?? face}`,
    ...along,
    ...down,
    proposed ? '; the file does not place it, and there is room here' : '',
  ])
  if (wallMm !== undefined && leastThreadMm !== undefined)
    rows.push([
      'Its thread',
      ...(threadMm === undefined ? [] : [at(threadMm), '; ']),
      'the wall of ',
      at(wallMm),
      ' and its nut need ',
      at(leastThreadMm),
    ])
  if (roomMm !== undefined) rows.push(['Room behind it', at(roomMm), ', from the wall’s outer face'])
  return rows
}
