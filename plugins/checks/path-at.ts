import type {Build} from '../build-file/build.ts'
import type {Place} from '../build-file/place.ts'

/** Find the path under a key whose value stands at a place, where the key's own spelling is not kept. */
export function pathAt({places}: Build, under: string, {line, column}: Place): string | undefined {
  return Object.keys(places).find((path) => {
    const place = places[path]!
    return path.startsWith(`${under}.`) && place.line === line && place.column === column
  })
}
