/** The address at which a build that was tried is written into the journal, while somebody writes. */
export const newBuildPath = '/~new-build'

/** What came of it, for whoever asked. */
export interface WrittenAnswer {
  says: string
}
