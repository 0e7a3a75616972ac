import {box, cylinder} from '../solids/convex.ts'
import {solid} from '../solids/solid.ts'
import type {Vec} from '../solids/space.ts'
import {onHead} from './neck-look.ts'
import type {Mark, Piece} from './scene.ts'
import type {Moment} from './worked.ts'

/** Posts of the tuners, standing out of the head; pins and ferrules at the tail. */
export function hardwarePieces({plan, neck, x}: Moment): Piece[] {
  const {tuners = [], outline} = plan
  const {postHoleMm, stringHeightMm = 8, buttonMm = 0, side} = outline?.tuners ?? {}
  const head = neck?.head
  if (!postHoleMm || !neck || !head) return []
  const place = (alongMm: number, xMm: number, upMm: number) => onHeadOf(neck, alongMm, [xMm, upMm])
  return tuners
    .filter(({stationMm}) => stationMm < 0)
    .flatMap(({stationMm, offMm}): Piece[] => {
      const at = x(offMm)
      const out =
        side === 'bass' || side === 'treble' ? Math.sign(x(side === 'bass' ? -1 : 1)) : Math.sign(at) || 1
      const edge = (out * neck.neck.nutWidthMm) / 2
      const low = -head.thicknessMm - 4
      return [
        {
          of: 'tuners',
          grain: 'none',
          solid: solid(
            cylinder(
              place(-stationMm, at, 0.1),
              place(-stationMm, at, stringHeightMm * 1.4),
              postHoleMm * 0.9,
            ),
          ),
        },
        ...(buttonMm > 0
          ? [
              {
                of: 'tuners',
                grain: 'none' as const,
                solid: solid(
                  cylinder(
                    place(-stationMm, edge + out * 8, low),
                    place(-stationMm, edge + out * (8 + buttonMm * 0.5), low),
                    buttonMm * 0.8,
                  ),
                ),
              },
            ]
          : []),
      ]
    })
}
const onHeadOf = ({head}: NonNullable<Moment['neck']>, alongMm: number, at: readonly [number, number]) =>
  onHead(head!, alongMm, at)

/** The bridge, on the neck's face or on the top. */
export function bridgePiece({plan, box: look}: Moment): Piece[] {
  const {outline, bridge, action} = plan
  if (!outline?.bridge || !bridge) return []
  const {lengthMm, footMm} = outline.bridge
  const foot = Math.max(footMm, 5)
  const base = bridge.on === 'top' && look ? look.topZ : (action?.bridgeStandsMm ?? 0)
  const high = Math.max(action?.bridgeHeightMm ?? base + 10, base + 3)
  return [
    {
      of: 'bridge',
      wood: 'maple',
      grain: 'across',
      solid: solid(
        box(
          [-lengthMm / 2, bridge.stationMm - foot / 2, base],
          [lengthMm / 2, bridge.stationMm + foot / 2, high],
        ),
      ),
    },
  ]
}

/** The strings, from post over nut and bridge to the anchor. */
export function stringMarks({plan, neck, x}: Moment, isNow: boolean): Mark[] {
  const {strings = [], scale, action, bridge, tuners = [], anchors = []} = plan
  if (!bridge) return []
  return strings.flatMap(({name}, i): Mark[] => {
    const [nutX, bridgeX] = [x(scale?.nutOffMm?.[i] ?? 0), x(scale?.bridgeOffMm?.[i] ?? 0)]
    const nut: Vec = [nutX, 0, 2]
    const over: Vec = [bridgeX, bridge.stationMm, (action?.bridgeHeightMm ?? 10) + 0.5]
    const [post, anchor] = [tuners[i], anchors[i]]
    const of = `string ${name}`
    return [
      {of, a: nut, b: over, isNow},
      ...(post && neck?.head && post.stationMm < 0
        ? [{of, a: onHead(neck.head, -post.stationMm, [x(post.offMm), 6]), b: nut, isNow}]
        : []),
      ...(anchor
        ? [
            {
              of,
              a: over,
              b: [x(anchor.offMm), anchor.stationMm, (plan.outline?.anchors?.heightMm ?? 0) + 0.5] as Vec,
              isNow,
            },
          ]
        : []),
    ]
  })
}
