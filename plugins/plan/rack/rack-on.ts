import type {Shelf, ShelfPiece} from './shelf.ts'

/** List what stands on the rack on a day; without one, everything that was ever bought and not cut. */
export function rackOn({pieces}: Shelf, day: string | undefined): ShelfPiece[] {
  return pieces.filter(({bought, from}) => {
    const since = from?.on ?? bought
    return !since || !day || since <= day
  })
}
