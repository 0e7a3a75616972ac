import {gluedOn, glueUp, mill, plane, planeFaces, rip, strike, trim} from './blank-scenes.ts'
import {cutDown, dots, frets, groove, lines, planeSides, roundOver, sandBoard} from './face-scenes.ts'
import {drillHead, drillNeck, glueHead, sawScarf, shapeHead} from './head-scenes.ts'
import type {SceneOf} from './worked.ts'

export const neckScenes: Readonly<Record<string, SceneOf>> = {
  mill,
  rip: rip(false),
  'rip-small': rip(true),
  trim,
  'plane-faces': planeFaces,
  'glue-up': glueUp,
  plane,
  'mark-lines-stick': strike,
  'mark-lines-face': strike,
  'mark-lines-board': strike,
  'saw-scarf': sawScarf,
  'glue-head': glueHead,
  'glue-up-plate': gluedOn,
  'glue-up-face': gluedOn,
  'glue-up-board': gluedOn,
  'plane-sides': planeSides,
  'shape-head': shapeHead,
  'drill-head': drillHead,
  'drill-neck': drillNeck,
  'mark-lines': lines,
  'burn-marks': lines,
  'drill-neck-dots': dots,
  'cut-down': cutDown,
  'groove-nut': groove,
  'round-over': roundOver,
  'sand-board': sandBoard,
  'slot-frets': frets,
  fret: frets,
  'fret-ends': frets,
}
