import type {NeckConcern} from './concern.ts'
import {sectionAt} from './section-at.ts'

/** Cut the neck at the nut, in the middle of the free neck, at the box's edge and wherever it changes. */
export const neckSections: NeckConcern = ({model, cut}) => {
  const sections = model.changes.flatMap(({stationMm, what}) => {
    const section = sectionAt(model, stationMm, cut)
    return section ? [{...section, what}] : []
  })
  return sections.length > 0 ? {sections} : {}
}
