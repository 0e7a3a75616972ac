import type {BareFace} from '../plan/work/step-facts.ts'
import {inWords} from './quantities.ts'
import {bitsInWords, clampsOn, type WordsOf} from './step-writing.ts'

/** The words of the steps that make the box ready, and of sanding and finish. */
export const boxSteps = {
  'box-prepare': ({keepsPaper, isStripped, sizes}, {asWritten}) => ({
    does: `Pull nails and staples, glue loose corners.${keepsPaper ? ' The paper stays.' : ''}${isStripped ? '' : centred}`,
    check: sizes.length > 0 ? `Outside it reads ${sizes.map(asWritten).join(' × ')}.` : undefined,
  }),
  'box-strip': () => ({
    does: `Damp the paper, lift it off, wipe the paste away; let it dry flat.${centred}`,
  }),
  'fit-blocks': ({setting, count}) => ({
    does: `Glue ${count === 1 ? 'the block' : `the ${count} blocks`} in, centred here.`,
    setting: clampsOn(setting),
  }),
  'drill-top': ({setting}) => ({
    does: 'Scrap clamped under; big holes from both sides.',
    setting: setting && bitsInWords(setting.bits),
  }),
  'drill-box': ({setting}) => ({
    does: 'Scrap held inside each wall.',
    setting: setting && bitsInWords(setting.bits),
  }),
  'notch-box': ({setting: {width, depth, tailWidthMm, topOffMm}, bothEnds}, {asWritten, size}) => ({
    does: `Scribe round the neck, saw inside the lines, pare${bothEnds ? ', at both ends' : ''}.`,
    setting: `${asWritten(width)} wide${tailWidthMm === undefined ? '' : `, ${size(tailWidthMm)} in the tail wall`}, ${asWritten(depth)} deep counted with the top on${topOffMm === undefined ? '' : `, ${size(topOffMm)} with it off`}`,
    check: 'Dry-fitted, a string runs down the middle.',
  }),
  sand: ({keepsPaper}) => ({
    does: `With the grain, dust off between grits${keepsPaper ? ', not on the paper' : ''}.`,
    setting: '120, 180, then 220',
    check: 'No scratch in low light.',
  }),
  finish: ({setting, coats, on, bare, isMoved, isOil}) => ({
    does: `${coats === 1 ? 'One thin coat' : `${coats} thin coats`}${on ? ` on the ${on}` : ''}.${bare.length > 0 ? ` Keep bare ${inWords(bare.map((face) => bareFaces[face]))}.` : ''}${isMoved ? ' Put in an order that holds; the file has another.' : ''}`,
    setting: setting && `${setting.betweenH} h between coats`,
    check: isOil ? 'Wiped dry; no smell left before more goes over it.' : undefined,
  }),
} satisfies Partial<WordsOf>

const centred = ' Centre line over top and ends.'

const bareFaces: Readonly<Record<BareFace, string>> = {
  joint: 'where neck and box are glued',
  rim: 'the rim under the top',
}
