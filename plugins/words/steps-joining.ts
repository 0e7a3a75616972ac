import type {AsWritten, DrivenScrews, StepFacts} from '../plan/work/step-facts.ts'
import {inWords} from './quantities.ts'
import {inRow, type WordsOf} from './step-writing.ts'

/** The words of the steps that put neck, box and hardware together, from the rods to the setting up. */
export const joiningSteps = {
  'cut-rod': ({setting: {thick, long} = {}}, {asWritten}) => ({
    does: 'In the vice; file both ends round.',
    setting: inRow([thick && `${asWritten(thick)} thick`, long && `${asWritten(long)} long`]),
  }),
  'fit-parts': ({names}) => ({
    does: `Shape and fit: ${names.length > 0 ? inWords(names) : 'what the file lists'}.`,
  }),
  'fasten-hardware': ({anchors, extras}) => ({
    does: `${inWords(['Tuners', ...anchorsCalled(anchors), ...extras])}.`,
  }),
  fasten: ({setting: {screws, shimMm, gapMm} = {}, by, length}, {size, asWritten}) => ({
    does: joined[by],
    setting: inRow(
      [
        screws && driven(screws, asWritten),
        shimMm !== undefined && `wedge ${size(shimMm)} at its thick end`,
        gapMm !== undefined && `${size(gapMm)} of daylight under the top`,
      ],
      '; ',
    ),
    check: length
      ? `Nut line to bridge line still ${asWritten(length)}; a string runs down the middle.`
      : 'A string from nut to tail runs down the middle.',
  }),
  wire: ({under}) => ({
    does: `Jack soldered on the bench; pickup${under ? ` under the ${under}` : ''}; lead tied down.`,
    check: 'A tap on the top comes through.',
  }),
  'fasten-top': ({held, setting}, {asWritten}) => ({
    does:
      held === 'glued'
        ? 'Look inside; scrape the rim bare, glue the top down.'
        : held
          ? `The top is ${held}; look inside first.`
          : 'Look inside, then close the top as it was.',
    setting: setting && driven(setting.screws, asWritten),
    check: 'Nothing rattles.',
  }),
  string: ({setting, setBack, bridgeMm, hasFlatNut}, {fine, size}) => ({
    does: `${hasFlatNut ? 'Nut, bought or of hard wood, glued on its line. ' : ''}${setBack ? `Bridge set back: ${bridgeAt(setBack, fine)}` : 'Bridge on its line'}${bridgeMm !== undefined && bridgeMm > 0 ? `, bought or of hard wood, ${size(bridgeMm)} high` : ''}; all up by turns, a little each.`,
    setting: setting?.strings.join(', '),
    check: 'Each holds its note after a stretch.',
  }),
  'set-up': ({setting: {nut, octave} = {}, isFretted}, {asWritten}) => ({
    does: 'Heights, then the bridge by the octave; write them down.',
    setting: inRow([nut && `nut ${asWritten(nut)}`, octave && `octave ${asWritten(octave)}`]),
    check: isFretted
      ? 'Pressed at the octave and chimed over it, a string reads the same.'
      : 'Half the string rings its octave true.',
  }),
} satisfies Partial<WordsOf>

/** Count screws: `6 of No. 4, 5/8 in`. */
const driven = ({count, size, length}: DrivenScrews, asWritten: (one: AsWritten) => string): string =>
  `${count} of No. ${size}${length ? `, ${asWritten(length)}` : ''}`

type SetBack = NonNullable<Extract<StepFacts, {of: 'string'}>['setBack']>

/** Say where a bridge is set from the nut line: `25 13/64 in at G2, 25 7/32 in at G3`. */
function bridgeAt({first, last}: SetBack, fine: (mm: number) => string): string {
  const [from, to] = [fine(first.mm), last && fine(last.mm)]
  if (to === undefined || from === to) return `${from} from the nut line`
  return `${from} from the nut line at ${first.name}, ${to} at ${last?.name}`
}

const joined = {
  glue: 'Scrape the joint bare, dry-fit, then glue and clamp.',
  screws: 'Wax the screws, drive them by hand.',
} as const

function anchorsCalled(kind: string | undefined): string[] {
  if (!kind || kind === 'plain') return []
  return [kind === 'pins' || kind === 'tailpiece' ? kind : `${kind}s`]
}
