import type {OpenWhy, ProposedWhy} from '../plan/kit/proposal.ts'
import type {AssumedWhy, Assumption} from '../plan/kit/settled.ts'

/** Why each thing is proposed, or assumed, as it is. */
const whys: Readonly<Record<ProposedWhy | AssumedWhy, string>> = {
  'anchors behind the box':
    'halfway between the box and the wood that must stay behind them, as far apart as the strings at the bridge or as the neck lets them; sizes by common practice, no source',
  'anchors over the end': 'the neck leaves no room for holes past the box; common practice, no source',
  'anchors on the wall': 'the neck does not reach past the box; common practice, no source',
  'block behind the end':
    'what screws through the wall pull against, as deep as the neck meets it; sizes by common practice, no source',
  'blocks under the neck':
    'under the neck, near the walls, where the top moves least; sizes by common practice, no source',
  'blocks in the corners':
    'what the top’s screws hold in, since this wall is too thin to be screwed into; ten shanks long, five wide; common practice, no source',
  'head as thick as tuners fit': 'in the middle of what tuners fit; common practice, no source',
  'hole by the air':
    'the bit with which the air of this box answers nearest to half an octave over the lowest string, where the wood around it is widest; the half octave by violin (275 over 196 Hz) and guitar (100 over 82), from memory',
  'nut filed to height':
    'over frets, or where no rod would do, filed to its height; common practice, no source',
  'posts in one row': 'behind their own strings, clear of each other; sizes by common practice, no source',
  'posts in two rows':
    'outer strings to the near posts, clear of edges, buttons and strings; sizes by common practice, no source',
  'rod for the height':
    'the thinnest rod that stands as high as the strings are drawn, a quarter of it in its groove; common practice, no source',
  'screws into the end':
    'the first sold that hold three times what the strings ask, by statics about the edge of the box’s end',
  'screws into the neck':
    'the first sold that stay in the wood and hold three times what the strings ask; see Screws',
  'screws round the top':
    'the shortest sold with thread enough, near each corner and 6 in apart at the most, so that the top comes off again; common practice, no source',
  'weakest kind':
    'the name leaves the kind open, so strength counts as that of the weakest it may mean (Wood Handbook)',
  'strings held down': 'the strings go down less than 4° behind the nut on this head',
}

/** Say what a value is taken to be. */
export const assumedInWords = ({value, why}: Pick<Assumption, 'value' | 'why'>): string =>
  why === ('weakest kind' satisfies AssumedWhy) ? `as strong as ${value}` : value

/** Say why a value is assumed or proposed. */
export const whyInWords = (why: string): string => (whys as Readonly<Record<string, string>>)[why] ?? why

/** Why nothing is proposed, and what would change that. */
export const openWhy: Readonly<Record<OpenWhy, string>> = {
  'head does not fit tuners':
    'No posts are proposed: the head is not as thick as tuners fit. Change head.thickness, or glue a head.plate on.',
  'no notes': 'No sound hole is proposed until each string has its note: it is sized by the lowest.',
  'no room behind the bridge':
    'No anchors are proposed: nothing is left behind the bridge to hold them. Give a longer neck or box, or move the bridge.',
  'no room for a hole':
    'No sound hole is proposed: no bit that is sold leaves wood enough to walls, neck, blocks and bridge.',
  'no room for anchors':
    'No anchors are proposed: the neck past the box is too short or too narrow for them. Give a longer or wider neck, or a tailpiece.',
  'no room for blocks':
    'No screws and blocks are proposed: the box leaves no room for a block where the neck is fastened.',
  'no room for posts':
    'No posts are proposed: this head is too short or too narrow for so many. Give a longer head or a wider neck.',
  'no room for the top’s screws':
    'No screws are proposed for the top: the box leaves no room at its corners for blocks that would take them, beside neck, holes and bridge. Glue the top, or make room.',
  'no screw holds':
    'No screws are proposed: none that is sold holds three times what the strings ask here, and stays in the wood. Give a thicker or harder neck, or let it run through.',
  'push bows the neck':
    'No anchors are proposed: the strings behind them would push the bridge down on the box, and bow this neck too much. Give a thicker neck, or a bridge that stands lower.',
  'push sinks the top':
    'No anchors are proposed: the strings behind them would push the bridge down harder than this top bears. Give a thicker top or a harder one, a bridge with a longer foot, or one that stands lower.',
  'strings do not reach':
    'No posts are proposed: a packet’s string does not reach from the anchors to a post on this head. Give a shorter scale, or anchors nearer to the bridge.',
  'pull not known':
    'No screws are proposed until the strings’ pull is known: it takes their notes and gauges.',
}
