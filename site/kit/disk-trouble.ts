import {isAbsolute, relative} from 'node:path'

const mayNot = (place: string) =>
  `${place || 'a file'} may not be written; look at its rights and those of its folder`
const tooMany = () => 'too many files are open on this machine; close something, and try again'

const says: Readonly<Record<string, (place: string) => string>> = {
  ENOSPC: (place) => `the disk${place && ` of ${place}`} is full; make room, and try again`,
  EDQUOT: (place) =>
    `there is no room left for you on the disk${place && ` of ${place}`}; make room, and try again`,
  EFBIG: (place) => `${place || 'a file'} is larger than may be written here`,
  EROFS: (place) => `${place || 'this'} lies on a disk that can only be read`,
  EACCES: mayNot,
  EPERM: mayNot,
  ENOTDIR: (place) => `${place || 'a file'} lies where a folder is needed`,
  EISDIR: (place) => `${place || 'a folder'} is a folder, where a file is needed`,
  EIO: (place) => `the disk${place && ` of ${place}`} fails; copy what is on it while it can be read`,
  EMFILE: tooMany,
  ENFILE: tooMany,
  ENAMETOOLONG: (place) => `${place || 'a file'} has a longer name than the disk can hold`,
}

/** What a disk without links says to one. */
const hasNoLinks: readonly string[] = ['EPERM', 'ENOTSUP', 'EOPNOTSUPP', 'ENOSYS']

/**
 * Say what kept something from being written, in words where it was the disk; `root` (absolute) is the journal's, and
 * `place` is where it was to go, for a disk that does not say.
 */
export function diskTrouble(error: unknown, root: string, place = ''): string {
  const cause = causeOf(error)
  const {code = '', syscall, path, dest} = cause
  if (syscall === 'symlink' && hasNoLinks.includes(code))
    return `the disk${place && ` of ${place}`} keeps no links, by which a site is shown; name a folder on another one`
  const named = dest ?? path
  return Object.hasOwn(says, code) ? says[code]!(named ? asNamed(named, root) : place) : cause.message
}

function asNamed(path: string, root: string): string {
  const inside = relative(root, path)
  return isAbsolute(path) && inside !== '' && !inside.startsWith('..') ? inside : path
}

type Cause = NodeJS.ErrnoException & {dest?: string; originalError?: unknown}

/** Eleventy wraps what the disk says. */
function causeOf(error: unknown): Cause {
  const {originalError} = error as Cause
  return originalError instanceof Error ? causeOf(originalError) : (error as Cause)
}
