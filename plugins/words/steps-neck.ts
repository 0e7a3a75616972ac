import type {SawnPart} from '../plan/work/step-facts.ts'
import {inchMm} from '../tables/units.ts'
import {partName, plainName} from './cut-list.ts'
import {bitsInWords, clampsOn, inRow, type WordsOf, type Writing} from './step-writing.ts'

/** The words of the steps that make the neck. */
export const neckSteps = {
  mill: ({setting}, {size}) => ({
    does: 'One face flat, then one edge square to it.',
    setting: setting && `leave ${size(setting.planeMm)} a face`,
    check: 'No light under straightedge and square.',
  }),
  rip: ({setting}, by) => ({
    does: 'Rip to width; crosscut to length.',
    setting: setting && sawn(setting.sawn, by),
    check: 'Each piece bears its name.',
  }),
  'rip-small': ({setting: {sizes}}, {bare, size}) => ({
    does: 'Rip and plane while 12 in or longer.',
    setting: counted(
      sizes.map(
        (part) => `${bare(part.widthMm)} × ${size(part.thicknessMm)} (${plainName(partName(part.called))})`,
      ),
    ),
  }),
  trim: ({setting: {sizes}}, {size}) => ({
    does: 'By hand in a mitre box; ends on a shooting board.',
    setting: counted(sizes.map((part) => `${size(part.lengthMm)} (${plainName(partName(part.called))})`)),
    check: 'Ends square.',
  }),
  'plane-faces': ({setting: {layers}}, {size}) => ({
    does: 'Flat and true, the day they are glued.',
    setting: inRow(
      layers.map(
        ({thicknessMm, strips, stripMm}, i) =>
          `layer ${i + 1}: ${strips > 1 ? `${strips} strips ${size(stripMm)} wide, ` : ''}${size(thicknessMm)}`,
      ),
      '; ',
    ),
    check: 'Held to the light, no gap.',
  }),
  'mark-lines-stick': () => ({
    does: 'Nut line across face and edges; centre line.',
  }),
  'mark-lines-face': () => ({does: 'On the new face, up from the edges.'}),
  'mark-lines-board': () => ({does: 'On the fingerboard, up from the edges.'}),
  'groove-nut': ({setting: {deep, wide}}, {asWritten}) => ({
    does: 'At the nut line: two saw cuts, then a round file.',
    setting: inRow([`${asWritten(deep)} deep`, wide && `for ${asWritten(wide)}`]),
    check: 'The rod lies in it and does not rock.',
  }),
  'cut-down': ({setting: {deepMm, leftMm, fromMm, toMm}}, {size, place}) => ({
    does: 'Saw to the line at both ends, saw out between, pare.',
    setting: `${size(deepMm)} off the face, from ${place(fromMm)} to ${place(toMm)}`,
    check: `${size(leftMm)} is left all along.`,
  }),
  'glue-up': ({setting}) => ({
    does: 'Dry-fit, then glue the layers.',
    setting: inRow([setting.clamps !== undefined && `${setting.clamps} clamps and cauls`, clampsOn(setting)]),
    check: 'A thin bead along every seam.',
  }),
  plane: ({setting}, {size}) => ({
    does: 'Plane to thickness.',
    setting: inRow([
      setting?.stickMm !== undefined && `stick ${size(setting.stickMm)}`,
      setting?.boardMm !== undefined && `fingerboard ${size(setting.boardMm)}`,
      setting?.capMm !== undefined && `cap ${size(setting.capMm)}`,
    ]),
    check: 'The same at both ends and the middle.',
  }),
  'saw-scarf': ({setting: {angleDeg, fromSquareDeg, slope, runMm}, faceMm}, {size}) => ({
    does: 'In a carrier; then plane both slopes as one.',
    setting: `${degrees(angleDeg)} to the stick (${degrees(fromSquareDeg)} from square, 1 in ${Number(slope.toFixed(1))}), blade tilt 0°, over ${size(runMm)}`,
    check: `The sawn face reads ${size(faceMm)}.`,
  }),
  'glue-head': ({setting}) => ({
    does: 'Turn the cut piece over, its slope under the neck’s end; two brads, pulled with the clamps.',
    setting: clampsOn(setting),
    check: 'Straight along both edges.',
  }),
  'glue-up-plate': () => ({does: 'Pads under the clamps.'}),
  'shape-head': ({setting: {thicknessMm, retainer}, angleDeg, dropMm}, {size}) => ({
    does:
      angleDeg !== undefined
        ? `Saw the head out of the solid, ${angleDeg}° back; plane to thickness, saw the outline.`
        : dropMm !== undefined
          ? `Cut its face down ${size(dropMm)}; plane to thickness, saw the outline.`
          : 'Plane to thickness, saw the outline.',
    setting: `${size(thicknessMm)} thick${retainer ? `; a ${retainer} holds the strings down` : ''}`,
    check: 'Face and back are parallel.',
  }),
  'drill-head': ({setting}, {units}) => ({
    does: `${units === 'in' ? '1/16 in' : '1.5 mm'} through first, then to size from both faces.`,
    setting: setting && bitsInWords(setting.bits),
    check: 'A post turns without shaking.',
  }),
  'glue-up-face': ({setting}, {place}) => ({
    does: 'Plane the stick’s face, then glue at once.',
    setting: inRow([...(setting.fromMm ?? []).map((mm) => `from ${place(mm)}`), clampsOn(setting)]),
  }),
  'glue-up-board': ({setting: {fromMm, toMm, ...setting}}, {place}) => ({
    does: 'Plane the stick’s face, glue at once; pins against sliding, pulled with the clamps.',
    setting: `from ${place(fromMm)}${toMm === undefined ? '' : ` to ${place(toMm)}`}, ${clampsOn(setting)}`,
  }),
  'sand-board': ({setting: {radiusMm}, sagittaMm, isSlotted}, {size, units}) => ({
    does: `With a block of that radius, along the neck${isSlotted ? '; then the slots as deep at the edges as in the middle' : ''}.`,
    setting: `radius ${size(radiusMm)}`,
    check: `Under a straightedge across the nut’s end each edge lies ${fine(sagittaMm, units)} low.`,
  }),
  'plane-sides': ({setting}, {size}) => ({
    does: 'To the line, the same off each; tail end square.',
    setting:
      setting &&
      `${size(setting.nutMm)} wide${setting.tailMm === undefined ? '' : ` at the nut, ${size(setting.tailMm)} at the tail`}`,
    check: 'Centre line in the middle at both ends.',
  }),
  'round-over': ({setting: {radiusMm, stops}}, {size, place}) => ({
    does: 'Stops clamped on; two passes; file the run-outs.',
    setting: inRow([
      `radius ${size(radiusMm)}`,
      stops &&
        `bit’s centre from ${place(stops.fromMm)} to ${place(stops.toMm)} (it cuts ${size(stops.runInMm)} past)`,
    ]),
    check: 'Both edges start and stop alike.',
  }),
  'mark-lines': ({isSanded, onBoard, fretted, length, last}, {asWritten}) => ({
    does: onBoard
      ? 'Lines on the fingerboard, the rule left lying; the rest on the neck.'
      : isSanded
        ? 'Nut line anew; all from it, the rule left lying.'
        : 'All from the nut line, the rule left lying.',
    check: `Nut line to bridge line reads ${asWritten(length)}; to ${fretted ? 'fret' : 'line'} ${last.label}, ${last.mark}.`,
  }),
  'slot-frets': ({setting: {kerfMm, depthMm} = {}, onBoard, hasZero, lastMark}, {units}) => {
    return {
      does: `Square across${onBoard ? ', the board still square and wide' : ''}${hasZero ? '; the zero fret’s slot on the nut line' : ''}.`,
      setting: inRow([
        kerfMm !== undefined && `kerf ${fine(kerfMm, units)}`,
        depthMm !== undefined && `depth stop ${fine(depthMm, units)}`,
      ]),
      check: lastMark
        ? `Nut line to the last slot reads ${lastMark}.`
        : 'A square laid to the neck’s edge lies along the slot.',
    }
  },
  'drill-neck': ({setting}) => ({
    does: 'Centre-punch; scrap behind; depth marked on the bit.',
    setting: setting && bitsInWords(setting.bits),
  }),
  'drill-neck-dots': () => ({does: 'Drill shallow, glue in, level.'}),
  'burn-marks': ({burnt}) => ({does: `The ${burnt.join(' and ')}, on bare wood.`}),
  fret: ({setting, isFretted, hasZero}, {size}) => ({
    does: `${hasZero && !isFretted ? 'The zero fret, from' : 'From'} both ends to the middle${hasZero && isFretted ? ', the zero fret too' : ''}; nip close.`,
    setting:
      setting &&
      `${setting.pieces === 1 ? '1 piece' : `${setting.pieces} pieces`}, ${size(setting.wireMm)} of wire, ${size(setting.overhangMm)} over at each side`,
    check: isFretted ? 'A straightedge rocks on no fret.' : 'It lies down on the wood from edge to edge.',
  }),
  'fret-ends': () => ({does: 'Flush, then slanted, then round.', check: 'A rag catches nowhere.'}),
} satisfies Partial<WordsOf>

/** Say which sizes are sawn: `2 3/16 × 3/4 in (neck)`. */
const sawn = (parts: readonly SawnPart[], {size, bare}: Writing) =>
  counted(
    parts.map(
      (part) => `${bare(part.widthMm)} × ${size(part.lengthMm)} (${plainName(partName(part.called))})`,
    ),
  )

/** Put things in a row, equal ones once: `2 of 1 in (block)`. */
function counted(things: readonly string[]): string {
  const counts = new Map<string, number>()
  for (const what of things) counts.set(what, (counts.get(what) ?? 0) + 1)
  return [...counts].map(([what, count]) => (count > 1 ? `${count} of ${what}` : what)).join('; ')
}

const fine = (mm: number, units: 'in' | 'mm') =>
  units === 'in' ? `${(mm / inchMm).toFixed(3)} in` : `${mm.toFixed(2)} mm`

const degrees = (deg: number) => `${Number(deg.toFixed(1))}°`
