import type {Build} from '../../build-file/build.ts'

/** The day that a build's papers bear: when it was done, or else begun. */
export const dayOf = ({values}: Build): string | undefined => values.finished?.iso ?? values.started?.iso
