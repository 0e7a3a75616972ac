import type {Context} from '../part.ts'
import type {Cuts} from '../shape/stock.ts'
import {inRackOrder, type RackBuild} from './in-rack-order.ts'
import {piecesFor} from './pieces-for.ts'
import {putBack} from './put-back.ts'
import type {Shelf} from './shelf.ts'

export type RackContext = Required<Omit<Context, 'journal'>>

/**
 * Lead the builds past the rack in their order: each is planned with what stands there on its day, and leaves its
 * offcuts. `cutsOf` plans one. Gives the rack as it stands after the last.
 */
export async function throughRack<B extends RackBuild>(
  start: Shelf,
  builds: readonly B[],
  cutsOf: (build: B, context: RackContext) => Promise<Cuts | undefined>,
): Promise<Shelf> {
  let shelf = start
  for (const build of inRackOrder(builds, (one) => one)) {
    shelf = putBack(shelf, build, await cutsOf(build, piecesFor(shelf, build)))
  }
  return shelf
}
