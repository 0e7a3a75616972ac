import {lookBelow} from '../../site/journal/look-below.ts'

type Lines = ReadonlyMap<string, string>

export const linesOf = async (folder: string): Promise<Lines> => (await lookBelow(folder)).lines

/** List what is other below a folder than it was, by the paths in it, as whoever watches it tells. */
export async function changedSince(before: Lines, folder: string): Promise<string[]> {
  const now = await linesOf(folder)
  return [...new Set([...before.keys(), ...now.keys()])].filter((path) => now.get(path) !== before.get(path))
}
