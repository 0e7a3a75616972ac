import type {BlockContent} from 'mdast'
import type {Build} from '../../build-file/build.ts'
import type {Plan} from '../../plan/shape/plan.ts'
import {list, subHeading} from '../kit.ts'

/** Say what is done to the box before anything is fixed to it, and how one gets inside afterwards. */
export function prepareBox({box, pickup}: Plan, {values}: Build): BlockContent[] {
  const top = values.box?.top
  const paper = top?.paper?.value
  const held = box?.topHeld
  const hasHoles = (box?.soundHoles?.length ?? 0) > 0
  return [
    subHeading('Preparing the box'),
    list([
      'Settle which face is the top: the one under the strings, flat, and sound enough to drill. Pencil “top” inside it, and bass and treble on the edges: left and right change places when it is turned over.',
      ...(paper === 'keep'
        ? ['Keep its paper: seal it with thin shellac before drilling, so that the bit does not lift it.']
        : []),
      ...(paper === 'strip'
        ? [
            'Strip its paper before anything is marked: damp it, wait, and lift it with a blunt blade; let the wood dry for a day.',
          ]
        : []),
      'An old finish may hold lead: test it before sanding, and see the cautions.',
      ...(box?.blocks?.length
        ? ['Glue the blocks in before the top is drilled, so that the bit comes out in them cleanly.']
        : []),
      ...(held ? [heldInWords[held] ?? ''] : []),
      ...(pickup
        ? [
            box?.isShut
              ? 'With the top glued down nobody gets at the wiring again: settle that first.'
              : 'Leave the wires long enough to lift the top and lay it beside the box.',
          ]
        : []),
      ...(hasHoles
        ? []
        : ['There is no sound hole in the file; without one the box is closed, and quieter.']),
    ]),
  ]
}

const heldInWords: Readonly<Record<string, string>> = {
  glued: 'The top is glued down: everything inside is finished, tested and photographed first.',
  screwed:
    'The top is screwed: it comes off for every repair. Drill its screw holes before the finish, and do not drive the screws tight until it has dried.',
  hinged:
    'The top is hinged: a strip of felt under its free edge keeps it from rattling, and a catch keeps it shut.',
}
