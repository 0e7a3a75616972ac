import {changesAlong} from './changes-along.ts'
import type {NeckConcern} from './concern.ts'
import {cutNeck} from './cut-neck.ts'
import {sectionAt} from './section-at.ts'

/** Cut the neck at the nut, in the middle of the free neck, at the box's edge and wherever it changes. */
export const neckSections: NeckConcern = ({model}) => {
  const cut = cutNeck(model)
  const sections = changesAlong(model).flatMap(({stationMm, what}) => {
    const section = sectionAt(model, stationMm, cut)
    return section ? [{...section, what}] : []
  })
  return sections.length > 0 ? {sections} : {}
}
