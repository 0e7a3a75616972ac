import type {Check} from './check.ts'

/** Find a build that was done before it was begun. */
export const finishedBeforeStarted: Check = {
  rule: 'finished-before-started',
  find: ({values: {started, finished}}) =>
    started && finished && finished.iso < started.iso
      ? [
          {
            at: 'finished',
            cause: 'started',
            message: `finished ${finished.iso} is before started ${started.iso}; one of the two is a slip`,
          },
        ]
      : [],
}
