import {type Rounding, writeLength} from '../build-file/quantities/write-length.ts'
import {ownAt} from '../build-file/schema/path.ts'
import type {Brought, WoodHere} from '../plan/cautions/bench-facts.ts'
import type {Caution} from '../plan/cautions/cautions.ts'
import {type HazardName, hazards} from '../tables/hazards.ts'
import {poundForceN} from '../tables/units.ts'
import {tradeNotes, woodHazards} from '../tables/wood-hazards.ts'
import {partName} from './cut-list.ts'
import type {Ruler} from './lengths.ts'
import {inWords} from './quantities.ts'

/** What can happen, why here, what to do about it, and who says so. */
export interface CautionWords {
  hazard: string
  because: string
  does: string
  source: string
}

/** Say a caution in full: as the table of hazards has it with what brings it here, or as the maker wrote it. */
export function cautionInWords(caution: Caution, ruler: Ruler): CautionWords {
  if ('does' in caution)
    return {
      hazard: 'A caution of this build’s own.',
      because: 'The maker wrote it into the file.',
      does: caution.does,
      source: 'the build file',
    }
  const {hazard, does, source} = hazards[caution.id]
  return {hazard, because: whyHere(caution.id, caution.here, ruler), does, source}
}

function whyHere<Name extends HazardName>(id: Name, here: Brought[Name], ruler: Ruler): string {
  return because[id](here, {units: ruler.units, size: (mm, rounding) => writeLength(mm, ruler, rounding)})
}

/** How to write for this build. */
interface Written {
  units: Ruler['units']
  size: (mm: number, rounding?: Rounding) => string
}

const because: {[Name in HazardName]: (here: Brought[Name], by: Written) => string} = {
  'mains-power': ({extra}) =>
    extra === undefined ? 'The pickup is played through an amplifier.' : `The extras name ${extra}.`,
  battery: ({extra}) =>
    extra === undefined ? 'A microphone is fed by a battery.' : `The extras name ${extra}.`,
  solder: () => 'The pickup is wired to its jack.',
  rods: ({nut, bridge}) =>
    `Cut to length here: ${[nut && `a ${nut} for the nut`, bridge && 'a rod for the bridge'].filter(Boolean).join(' and ')}.`,
  'fret-wire': () => 'Each fret is nipped off a length of wire.',
  'fret-ends': ({count}) =>
    count === 1
      ? 'The zero fret ends at both edges of the neck.'
      : `${count ?? 'The'} frets end at both edges of the neck.`,
  'string-eyes': ({count, tensionN}, {units}) => {
    const pull =
      units === 'in' ? `${Math.round((tensionN ?? 0) / poundForceN)} lbf` : `${Math.round(tensionN ?? 0)} N`
    return `${count === 1 ? 'One string' : `All ${count} strings`} to bring up to pitch${tensionN === undefined ? '' : `, ${pull} in all`}.`
  },
  'small-player': (here, {size}) =>
    'said' in here ? `The file says: ${here.said}.` : `A scale of ${size(here.scaleMm)} suits small hands.`,
  'glue-epoxy': glued,
  'glue-ca': glued,
  'glue-pu': glued,
  'glue-hide': glued,
  'oil-rags': finished,
  solvents: finished,
  'lacquer-mist': finished,
  'burn-marks': ({burnt}) => `The ${burnt.join(' and ')} are burnt in.`,
  'lead-paint': (here) => {
    if ('called' in here) return `The file calls it ${here.called}.`
    if (!('paper' in here))
      return 'The box was found; what it is painted, printed or varnished with is not known.'
    return here.paper === 'strip' ? 'The paper on the box is stripped off.' : 'The paper on the box stays.'
  },
  'box-residue': () => 'The box was something else before; the file does not say what it held.',
  chisel: ({widthMm, depthMm}, {size}) =>
    `The neck is let into the box, ${size(widthMm)} wide and ${size(depthMm)} deep.`,
  'saw-kickback': ({part}, {size}) =>
    part
      ? `The ${partName(part.called)} is ripped ${size(part.widthMm)} wide out of ${size(part.lengthMm, 'up')}.`
      : 'The neck is ripped to its width.',
  'short-part': ({parts, shortestMm}, {size}) =>
    `Short here: ${firstFew([...new Set(parts.map(({called}) => partName(called)))])}; the shortest is ${size(shortestMm)} long.`,
  'scarf-saw': ({angleDeg, runMm}, {size}) =>
    `The scarf is sawn at ${angleDeg}°, over ${size(runMm)} of the stick.`,
  'router-direction': ({radius}) => `The back edges of the neck are rounded over, radius ${radius}.`,
  'big-bit': ({mm, topMm}, {size}) => `A hole of ${size(mm)} goes through a top of ${size(topMm)}.`,
  planer: ({part}, {size}) =>
    `The ${partName(part.called)} is only ${size(part.thicknessMm)} thick as it is sawn.`,
  'drill-clamp': ({count}) => `${count} ${count === 1 ? 'hole is' : 'holes are'} drilled.`,
  eyes: () => 'Sawing, planing and drilling throw chips.',
  noise: () => 'The stick is milled and sawn, by machine if there is one.',
  'redcedar-dust': ({woods}) => inPlace(woods),
  'rosewood-dust': ({woods}) => inPlace(woods),
  'cancer-dust': ({woods}) => inPlace(woods, (row) => ` (${woodHazards[row]?.cancer})`),
  'sensitizer-dust': ({woods}) => inPlace(woods, (row) => ` (${woodHazards[row]?.harms})`),
  'wood-dust': ({names}) =>
    names.length > 0
      ? `Sawn and sanded here: ${firstFew(names)}.`
      : 'A neck is sawn and sanded; its wood is not named yet.',
  'sheet-dust': ({sheets}) => sentence(sheets.map(({name, where}) => `the ${placeName(where)} is ${name}`)),
  'oily-wood': ({woods}) => inPlace(woods),
  'protected-wood': ({woods}) =>
    sentence(
      woods.map(({listing, ...wood}) => {
        const note = tradeNotes.find((one) => listing.includes(one.listing))
        return `${woodName(wood)}: ${listing}${note ? `; ${note.means}` : ''}`
      }),
    ),
}

function glued({glue}: {glue: string}): string {
  return `The neck is glued with ${glue}.`
}

function finished({kinds}: {kinds: readonly string[]}): string {
  return `The finish: ${kinds.join(', then ')}.`
}

/** Name each wood with where it is: `The box: cedar, which may be western redcedar.` */
function inPlace(woods: readonly WoodHere[], remark: (row: string) => string = () => ''): string {
  return sentence(woods.map((wood) => `the ${placeName(wood.where)}: ${woodName(wood)}${remark(wood.row)}`))
}

const woodName = ({name, isLoose, row}: WoodHere) => (isLoose ? `${name}, which may be ${row}` : name)

const placeNames: Readonly<Record<string, string>> = {
  'neck.cap': 'cap of the neck',
  'head.plate': 'plate of the head',
  'box.top': 'top',
  'box.blocks': 'blocks',
}
const placeName = (where: string) => ownAt(placeNames, where) ?? where

function sentence(clauses: readonly string[]): string {
  const all = clauses.join('; ')
  return `${all.charAt(0).toUpperCase()}${all.slice(1)}.`
}

/** Say the first three of several things, and how many more there are: `beech, ash, cherry and 2 more`. */
function firstFew(things: readonly string[]): string {
  const more = things.length - 3
  return more > 0 ? `${things.slice(0, 3).join(', ')} and ${more} more` : inWords(things)
}
