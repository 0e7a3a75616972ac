import {fineRulers} from '../../build-file/quantities/write-length.ts'
import type {BuildValues} from '../../build-file/schema/schema.ts'
import {pastThePostMm} from '../../tables/strings.ts'
import {nutAboveFaceMm} from '../action/action.ts'
import {stationOf} from '../kit/box-place.ts'
import {markAt, sizeOf} from '../kit/proposal-texts.ts'
import {tunerThicknessMm} from '../neck/head.ts'
import {stringAngleDeg} from '../neck/string-angles.ts'
import {type HeadShape, headShape} from '../neck-shape/head-shape.ts'
import {neckLayers} from '../neck-shape/layers.ts'
import {neckWidthAt} from '../neck-shape/taper.ts'
import {stringSpread} from '../scale/scale.ts'
import {packetOf} from '../strings/string-lengths.ts'
import type {Propose} from './around.ts'
import {findPosts, type Room, type Ruler} from './post-rows.ts'

/**
 * Propose the tuners' posts: bass strings on the bass side, the outermost nearest to the nut, so that inner strings pass
 * inside; as far apart as the head allows, clear of its edges, of each other, of buttons and of strings, and so far
 * back that every string goes down enough behind the nut. Where none does, a bar holds them down. Sizes of post hole,
 * button and string height: common practice, no source.
 */
export const proposePosts: Propose = (settled, {values, taper, action, place}) => {
  const {tuners, strings = [], head} = values
  if (strings.length === 0 || tuners?.at || tuners?.off || !taper) return []
  const layup = neckLayers(values, 0)
  const shape = layup && headShape(values, layup)
  const widthMm = neckWidthAt(0, taper)
  const nutOffMm = stringSpread(values)?.nutOffMm
  if (!shape || widthMm === undefined || !nutOffMm) return []
  const hole = tuners?.['post-hole'] ?? sizeOf('1/4', '6.5', settled)
  const button = tuners?.button ?? sizeOf('3/4', '19', settled)
  const height = tuners?.['string-height'] ?? sizeOf('5/16', '8', settled)
  const given = tuners?.side?.value
  const anchorMm = stationOf(values.anchors ?? {}, place)
  const side = strings.length === 1 && given !== 'bass' ? 'treble' : (given ?? 'both')
  const room: Room = {
    head: shape,
    widthMm,
    holeMm: hole.mm,
    buttonMm: button.mm,
    nutOffMm,
    stringsMm: strings.map(({gauge}) => gauge?.mm ?? 0),
    reachMm: strings.map(
      ({gauge}) => packetOf(gauge?.mm) - pastThePostMm - (anchorMm ?? Number.NEGATIVE_INFINITY),
    ),
    nutMm: action && nutAboveFaceMm(action),
    postHeightMm: height.mm,
  }
  const thickness = headThickness(values, shape, settled)
  if (thickness === 'none fits') return [{key: 'tuners', open: 'head does not fit tuners'}]
  const posts = findPosts(room, side, settled)
  if (!posts) {
    const isReached = !findPosts(
      {...room, reachMm: strings.map(() => Number.POSITIVE_INFINITY)},
      side,
      settled,
    )
    return [{key: 'tuners', open: isReached ? 'no room for posts' : 'strings do not reach'}]
  }
  const texts = {
    side,
    'post-hole': hole.text,
    button: button.text,
    'string-height': height.text,
    at: posts.atMm.map((mm) => markAt(mm, settled, 'down').text),
    off: posts.offMm.map((mm) => markAt(mm, settled, mm < 0 ? 'up' : 'down').text),
  }
  const isHeld = head?.retainer || posts.flattestDeg >= stringAngleDeg.least
  return [
    ...(thickness
      ? [{key: 'head', texts: {head: {thickness}}, why: 'head as thick as tuners fit' as const}]
      : []),
    ...(isHeld ? [] : [{key: 'head', texts: {head: {retainer: 'bar'}}, why: 'strings held down' as const}]),
    {
      key: 'tuners',
      texts: {tuners: texts},
      why: side === 'both' ? 'posts in two rows' : 'posts in one row',
    },
  ]
}

/**
 * Thin a head that comes out too thick for tuners: in the middle between what they fit. Nothing where it fits as it is;
 * one that the file makes too thick, or too thin, is not for tuners.
 */
function headThickness({head}: BuildValues, {thicknessMm, comesToMm}: HeadShape, ruler: Ruler) {
  const {least, most} = tunerThicknessMm
  if (thicknessMm >= least - 1e-6 && thicknessMm <= most + 1e-6) return undefined
  const fits = markAt((least + most) / 2, {...ruler, rulerMm: fineRulers[ruler.units].rulerMm}, 'down')
  return head?.thickness || (comesToMm ?? most) < least ? ('none fits' as const) : fits.text
}
