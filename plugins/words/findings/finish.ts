import type {Wording} from './wording.ts'

/** `isAlone`: nothing else is said of the finish, so that what would do can stand in its place. */
export function coatsInName({
  name,
  coats,
  isAlone,
}: {
  name: string
  coats: number
  isAlone: boolean
}): Wording {
  const whole = `{kind: ${name}, coats: ${coats}}`
  return {
    message: `the number of coats is read as part of the finish’s name; ${whole} would do`,
    ...(isAlone ? {expected: [whole]} : {}),
  }
}
