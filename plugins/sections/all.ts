import type {Section} from './section.ts'

/** Every section, sorted by name, a line each. */
export const allSections: readonly Section[] = []
