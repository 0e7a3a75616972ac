import {anchorsFront, bridgeFront, nutFront, tunersFront} from '../instrument/hardware.ts'
import {type Instrument, placed} from '../instrument/instrument.ts'
import {linesFront} from '../instrument/neck.ts'
import {circle, type Shape} from '../kit/shapes.ts'
import {frontBodies, type Woods} from './bodies.ts'
import {woodId} from './woods.ts'

/** What is drawn alike: its class for the style sheet, its shapes in mm about the nut line, and what fills it. */
interface Part {
  className: string
  shapes: readonly Shape[]
  fill?: string
}

/** List what is seen of an instrument from the front but for its strings, the hindmost first. */
export function frontParts(instrument: Instrument, woods: Woods): Part[] {
  const {plan} = instrument
  const lines = linesFront(instrument)
  const across = lines.filter(({is}) => is === 'path')
  const holes = (plan.box?.soundHoles ?? []).map((hole) =>
    circle('outline', placed(instrument, hole), hole.diameterMm / 2),
  )
  const screws = instrument.topHoles
    .filter(({what}) => what.hole === 'clearance' || what.hole === 'pilot')
    .map((screw) => circle('edge', placed(instrument, screw), Math.max(screw.diameterMm / 2, 2)))
  const parts: Part[] = [
    ...frontBodies(instrument, woods).map(({outline, wood}) => ({
      className: 'wood',
      shapes: [outline],
      fill: `url(#${woodId(wood)})`,
    })),
    {className: 'hole', shapes: holes},
    ...(plan.scale?.fretted
      ? [
          {className: 'fret-edge', shapes: across},
          {className: 'fret', shapes: across},
        ]
      : [{className: 'mark', shapes: across}]),
    {className: 'dot', shapes: lines.filter(({is}) => is === 'circle')},
    {className: 'metal', shapes: [...tunersFront(instrument), ...anchorsFront(instrument), ...screws]},
    {className: 'solid', shapes: [...nutFront(instrument), ...bridgeFront(instrument, 'nut')]},
  ]
  return parts.filter(({shapes}) => shapes.length > 0)
}
