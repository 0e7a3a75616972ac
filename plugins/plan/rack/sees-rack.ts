import type {RackBuild} from './in-rack-order.ts'

/** Tell whether a build's plan depends on the rack: it takes pieces, or asks for the longest scale without wood of its own. */
export function seesRack({values: {take, stock, scale}}: RackBuild): boolean {
  return (take?.length ?? 0) > 0 || (!scale?.length && !stock?.length)
}
