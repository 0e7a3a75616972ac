import {misreading, quoted, type Reading, reading} from './reading.ts'

/** Read true or false; yes and no are understood. */
export function readFlag(text: string): Reading<boolean> {
  const word = text.trim().toLowerCase()
  if (word === 'true' || word === 'yes') return reading(true)
  if (word === 'false' || word === 'no') return reading(false)
  return misreading('unreadable-flag', `${quoted(text)} is neither yes nor no`, ['true', 'false'])
}
