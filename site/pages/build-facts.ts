import {textAt} from '../../plugins/build-file/schema/path.ts'
import type {BuildValues} from '../../plugins/build-file/schema/schema.ts'
import type {SiteBuild} from '../kit/site-data.ts'

/** What tells instruments apart at a glance, as data: what the portfolio narrows and sorts by. */
export interface KindFacts {
  strings: number | undefined
  /** Notes from the player's bass side: `D3 A3 D4`. */
  tuning: string | undefined
  scaleMm: number | undefined
  frets: 'frets' | 'no frets' | undefined
  play: string | undefined
  join: string | undefined
  status: string | undefined
  tags: readonly string[]
  isPlayedWell: boolean
  /** The day it was done, or else begun. */
  date: string | undefined
}

/** Gather the facts of a build that its card, its page and the feed show. */
export function kindFacts(one: SiteBuild): KindFacts {
  const {plan, build} = one
  const {values} = build
  const notes = plan.strings?.map((string) => string.note)
  return {
    strings: plan.strings?.length ?? values.strings?.length,
    tuning: notes?.length ? notes.join(' ') : undefined,
    scaleMm: plan.scale?.lengthMm,
    frets: plan.scale && (plan.scale.fretted ? 'frets' : 'no frets'),
    play: plan.play,
    join: said(one, 'neck.joins'),
    status: plan.status,
    tags: values.tags?.map((tag) => tag.value) ?? [],
    isPlayedWell: playedWell(values),
    date: (values.finished ?? values.started)?.iso,
  }
}

/** The text of a value by its path: as the file wrote it, or as it was assumed; undefined where it is neither. */
export const said = ({build}: Pick<SiteBuild, 'build'>, path: string): string | undefined =>
  textAt(build.values, path)

/** Whether a build played well: its last note from playing says that it would be built again as it is. */
function playedWell({played}: BuildValues): boolean {
  return played?.at(-1)?.again?.value === 'yes'
}
