import type {ElementContent} from 'hast'
import {fractions} from '../../plugins/sections/kit/fraction.ts'
import {inline} from '../../plugins/sections/kit/inline.ts'
import {toElements} from '../../plugins/sections/kit/to-elements.ts'
import {length, lengthAlone, type Ruler} from '../../plugins/sections/kit.ts'

/** Write a length in the build's units, the other in smaller type. */
export const lengthOf = (mm: number, ruler: Ruler): ElementContent[] => toElements([length(mm, ruler)])

/** Write a length in the build's units alone. */
export const lengthOnly = (mm: number, ruler: Ruler): ElementContent[] => toElements([lengthAlone(mm, ruler)])

/** Set the fractions of a text a maker wrote. */
export const withFractions = (text: string): ElementContent[] => toElements(inline(fractions(text)))
