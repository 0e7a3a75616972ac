import type {Element} from 'hast'
import {s} from 'hastscript'
import type {Plan} from '../../plan/plan.ts'
import {saySide, sayTop} from '../../words/drawings/alt-texts.ts'
import {titleOf, viewWords, widthAndDepth} from '../../words/drawings/labels.ts'
import {bridgeSide, nutSide, postsSide} from '../instrument/hardware.ts'
import {type Instrument, instrumentOf} from '../instrument/instrument.ts'
import {stringSide, stringsFront} from '../instrument/strings.ts'
import type {Shape} from '../kit/shapes.ts'
import {pathData} from '../writers/svg.ts'
import {type Body, sideBodies, type Woods, woodsOf} from './bodies.ts'
import {type Frame, frameOf, namesPx, onPage, textPx, widthPx} from './frame.ts'
import {frontParts} from './front.ts'
import {type Leads, lineNumbers, num, sideNames, stationNames} from './names.ts'
import {woodId, woodPatterns} from './woods.ts'

interface HeroOptions {
  /** The box's wood, and that of a plate on the head, as the file names them. */
  boxWood?: string | undefined
  plateWood?: string | undefined
  leads?: Leads
}

/**
 * Draw the instrument as it looks, from the front and from the side, both hanging from one nut line at one scale: filled
 * by its woods, with its strings, and a name and a figure at each station. Undefined where its neck is not known.
 */
export function heroDrawing(
  plan: Plan,
  {boxWood, plateWood, leads = () => undefined}: HeroOptions,
): Element | undefined {
  const instrument = instrumentOf(plan)
  const frame = frameOf(instrument)
  if (!frame) return undefined
  const woods = woodsOf(plan, boxWood, plateWood)
  const seen = [...front(instrument, frame, woods), ...side(instrument, frame, woods)]
  const size = {width: widthPx, height: Math.ceil(frame.heightPx)}
  return s(
    'svg',
    {
      className: ['drawing', 'drawing-whole'],
      viewBox: `0 0 ${size.width} ${size.height}`,
      ...size,
      role: 'group',
      ariaLabelledBy: ['drawing-whole-title'],
      ariaDescribedBy: ['drawing-whole-desc'],
      fill: 'none',
      strokeLineCap: 'round',
      strokeLineJoin: 'round',
      fontSize: textPx,
    },
    [
      s('title', {id: 'drawing-whole-title'}, titleOf(plan, viewWords.whole.title)),
      s('desc', {id: 'drawing-whole-desc'}, `${sayTop(plan)} ${saySide(plan)}`),
      s('defs', woodPatterns([...new Set(Object.values(woods))])),
      ...seen,
      nutLine(frame),
      s('g', {className: ['names'], fill: 'currentColor'}, [
        ...stationNames(instrument, frame, leads),
        ...sideNames(instrument, frame, leads),
        ...lineNumbers(instrument, frame),
        ...widths(instrument, frame),
      ]),
    ],
  )
}

function nutLine({nutPx}: Frame): Element {
  return s('path', {
    className: ['hang'],
    d: `M${namesPx + 6} ${num(nutPx)}H${widthPx - 2}`,
    stroke: 'currentColor',
  })
}

function filled({outline, wood}: Body, frame: Frame, atPx: number, clip?: string): Element {
  const d = drawn([outline], frame, atPx)
  return s('path', {d, className: ['wood'], fill: `url(#${woodId(wood)})`, ...(clip && {clipPath: clip})})
}

const drawn = (shapes: readonly Shape[], frame: Frame, atPx: number) =>
  onPage(shapes, frame, atPx)
    .map((shape) => pathData(shape, (value) => String(num(value))))
    .join('')

function front(instrument: Instrument, frame: Frame, woods: Woods): Element[] {
  const parts = frontParts(instrument, woods).map(({shapes, ...properties}) =>
    s('path', {...properties, d: drawn(shapes, frame, frame.frontPx)}),
  )
  return [...parts, ...strings(instrument, frame)]
}

/** Strings as thick as they are to each other, on a lighter edge that parts them from dark wood. */
function strings(instrument: Instrument, frame: Frame): Element[] {
  const shapes = stringsFront(instrument)
  if (shapes.length === 0) return []
  const gauges = instrument.plan.strings ?? []
  return [
    s('path', {className: ['string-edge'], d: drawn(shapes, frame, frame.frontPx)}),
    ...shapes.map((shape, i) =>
      s('path', {
        className: ['string'],
        d: drawn([shape], frame, frame.frontPx),
        strokeWidth: num(0.6 + (gauges[i]?.gaugeMm ?? 0.4) * 0.9),
      }),
    ),
  ]
}

function side(instrument: Instrument, frame: Frame, woods: Woods): Element[] {
  const at = frame.sidePx
  const {bodies, layers, neck} = sideBodies(instrument, woods)
  const clip = 'drawing-whole-neck'
  const outlines = bodies.map(({outline}) => outline)
  return [
    s('clipPath', {id: clip}, [s('path', {d: drawn([neck], frame, at)})]),
    ...bodies.map((body) => filled(body, frame, at)),
    ...layers.map((layer) => filled(layer, frame, at, `url(#${clip})`)),
    s('path', {className: ['outline'], d: drawn(layers.length > 0 ? [neck] : outlines, frame, at)}),
    s('path', {className: ['metal'], d: drawn(postsSide(instrument), frame, at)}),
    s('path', {
      className: ['solid'],
      d: drawn([...nutSide(instrument), ...bridgeSide(instrument)], frame, at),
    }),
    s('path', {className: ['string-side'], d: drawn(stringSide(instrument), frame, at)}),
  ]
}

/** How wide the box is, and how deep, below its two views. */
function widths({box, plan}: Instrument, {nutPx, scale, bottomMm, frontPx, sidePx}: Frame): Element[] {
  if (!box) return []
  const [wide, deep] = widthAndDepth(box.widthMm, box.depthMm, plan)
  const y = num(nutPx + bottomMm * scale + 20)
  const middleMm = (plan.outline?.neck?.aboveTopMm ?? 0) + box.depthMm / 2
  const text = (x: number, words: string) => s('text', {x: num(x), y, textAnchor: 'middle'}, words)
  return [text(frontPx, wide), text(Math.min(sidePx + middleMm * scale, widthPx - 26), deep)]
}
