import {aboveTopDisagrees} from './above-top-disagrees.ts'
import {altMissing} from './alt-missing.ts'
import {anchorNearEdge} from './anchor-near-edge.ts'
import {anchorsCrowded} from './anchors-crowded.ts'
import {basedOnCircle} from './based-on-circle.ts'
import {basedOnMissing} from './based-on-missing.ts'
import {blockOutside} from './block-outside.ts'
import {blockUnderNeck} from './block-under-neck.ts'
import {bowTooLarge} from './bow-too-large.ts'
import {boxPlacesDisagree} from './box-places-disagree.ts'
import {boxWithoutInside} from './box-without-inside.ts'
import {bridgeNearTail} from './bridge-near-tail.ts'
import {bridgeOffBox} from './bridge-off-box.ts'
import {bridgeOverHole} from './bridge-over-hole.ts'
import {bridgePlace} from './bridge-place.ts'
import {buttonsTouch} from './buttons-touch.ts'
import {cautionsLeftOut} from './cautions-left-out.ts'
import type {Check} from './check.ts'
import {clearOutside} from './clear-outside.ts'
import {coreNotInside} from './core-not-inside.ts'
import {coreOnPlain} from './core-on-plain.ts'
import {directiveTwice} from './directive-twice.ts'
import {dotWithoutLine} from './dot-without-line.ts'
import {fileMissing} from './file-missing.ts'
import {fileOutside} from './file-outside.ts'
import {finishedBeforeStarted} from './finished-before-started.ts'
import {headTooThick} from './head-too-thick.ts'
import {headTooThin} from './head-too-thin.ts'
import {heightsDisagree} from './heights-disagree.ts'
import {holeNearBlock} from './hole-near-block.ts'
import {holeNearEdge} from './hole-near-edge.ts'
import {holeNearNeck} from './hole-near-neck.ts'
import {holeUnderNeck} from './hole-under-neck.ts'
import {holesClose} from './holes-close.ts'
import {jackInside} from './jack-inside.ts'
import {jackTooShort} from './jack-too-short.ts'
import {laminationsTooThick} from './laminations-too-thick.ts'
import {laminationsTooThin} from './laminations-too-thin.ts'
import {linePastBridge} from './line-past-bridge.ts'
import {linesPastPattern} from './lines-past-pattern.ts'
import {measureOutOfTolerance} from './measure-out-of-tolerance.ts'
import {measuredLineUnknown} from './measured-line-unknown.ts'
import {neckMissesBox} from './neck-misses-box.ts'
import {neckTooShort} from './neck-too-short.ts'
import {neckTooTall} from './neck-too-tall.ts'
import {neckTouchesTop} from './neck-touches-top.ts'
import {needsStarted} from './needs-started.ts'
import {nestedTooDeep} from './nested-too-deep.ts'
import {notchTooDeep} from './notch-too-deep.ts'
import {notchTooNarrow} from './notch-too-narrow.ts'
import {openValue} from './open-value.ts'
import {packetIncomplete} from './packet-incomplete.ts'
import {partUnplaced} from './part-unplaced.ts'
import {patternNotRising} from './pattern-not-rising.ts'
import {pickupInside} from './pickup-inside.ts'
import {pieceGone} from './piece-gone.ts'
import {pieceTwice} from './piece-twice.ts'
import {pieceUnknown} from './piece-unknown.ts'
import {pitchesOutOfOrder} from './pitches-out-of-order.ts'
import {roundOverTooLarge} from './round-over-too-large.ts'
import {scarfAngle} from './scarf-angle.ts'
import {screwComesOut} from './screw-comes-out.ts'
import {screwHeadThin} from './screw-head-thin.ts'
import {screwMissesBlock} from './screw-misses-block.ts'
import {screwNearEdge} from './screw-near-edge.ts'
import {screwOffBox} from './screw-off-box.ts'
import {screwOverloaded} from './screw-overloaded.ts'
import {screwThreadShort} from './screw-thread-short.ts'
import {sizeMissing} from './size-missing.ts'
import {stringAngleFlat} from './string-angle-flat.ts'
import {stringAngleSteep} from './string-angle-steep.ts'
import {stringFoulsPost} from './string-fouls-post.ts'
import {stringHole} from './string-hole.ts'
import {stringMaterialOpen} from './string-material-open.ts'
import {stringNearBreaking} from './string-near-breaking.ts'
import {stringNearEdge} from './string-near-edge.ts'
import {stringSlack} from './string-slack.ts'
import {stringStiff} from './string-stiff.ts'
import {stringTooLong} from './string-too-long.ts'
import {stringUneven} from './string-uneven.ts'
import {stringsCross} from './strings-cross.ts'
import {stringsOnFace} from './strings-on-face.ts'
import {stringsTooClose} from './strings-too-close.ts'
import {temperamentNotRising} from './temperament-not-rising.ts'
import {temperamentOctave} from './temperament-octave.ts'
import {thinUnderNut} from './thin-under-nut.ts'
import {tooManyParts} from './too-many-parts.ts'
import {topShutsIn} from './top-shuts-in.ts'
import {tunerHolesClose} from './tuner-holes-close.ts'
import {tunerNearEdge} from './tuner-near-edge.ts'
import {tunersUneven} from './tuners-uneven.ts'
import {unknownDirective} from './unknown-directive.ts'
import {unknownValue} from './unknown-value.ts'
import {unknownWood} from './unknown-wood.ts'
import {woundTooThin} from './wound-too-thin.ts'

/** Every check, sorted by rule, a line each. */
// biome-ignore format: a line each, so that checks can be added side by side
export const allChecks: readonly Check[] = [
  aboveTopDisagrees,
  altMissing,
  anchorNearEdge,
  anchorsCrowded,
  basedOnCircle,
  basedOnMissing,
  blockOutside,
  blockUnderNeck,
  bowTooLarge,
  boxPlacesDisagree,
  boxWithoutInside,
  bridgeNearTail,
  bridgeOffBox,
  bridgeOverHole,
  bridgePlace,
  buttonsTouch,
  cautionsLeftOut,
  clearOutside,
  coreNotInside,
  coreOnPlain,
  directiveTwice,
  dotWithoutLine,
  fileMissing,
  fileOutside,
  finishedBeforeStarted,
  headTooThick,
  headTooThin,
  heightsDisagree,
  holeNearBlock,
  holeNearEdge,
  holeNearNeck,
  holeUnderNeck,
  holesClose,
  jackInside,
  jackTooShort,
  laminationsTooThick,
  laminationsTooThin,
  linePastBridge,
  linesPastPattern,
  measureOutOfTolerance,
  measuredLineUnknown,
  neckMissesBox,
  neckTooShort,
  neckTooTall,
  neckTouchesTop,
  needsStarted,
  nestedTooDeep,
  notchTooDeep,
  notchTooNarrow,
  openValue,
  packetIncomplete,
  partUnplaced,
  patternNotRising,
  pickupInside,
  pieceGone,
  pieceTwice,
  pieceUnknown,
  pitchesOutOfOrder,
  roundOverTooLarge,
  scarfAngle,
  screwComesOut,
  screwHeadThin,
  screwMissesBlock,
  screwNearEdge,
  screwOffBox,
  screwOverloaded,
  screwThreadShort,
  sizeMissing,
  stringAngleFlat,
  stringAngleSteep,
  stringFoulsPost,
  stringHole,
  stringMaterialOpen,
  stringNearBreaking,
  stringNearEdge,
  stringSlack,
  stringStiff,
  stringTooLong,
  stringUneven,
  stringsCross,
  stringsOnFace,
  stringsTooClose,
  temperamentNotRising,
  temperamentOctave,
  thinUnderNut,
  tooManyParts,
  topShutsIn,
  tunerHolesClose,
  tunerNearEdge,
  tunersUneven,
  unknownDirective,
  unknownValue,
  unknownWood,
  woundTooThin,
]
