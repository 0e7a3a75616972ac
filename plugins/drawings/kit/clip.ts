import type {Point} from './shape.ts'

/**
 * Cut a straight line down to what lies inside a closed outline, as pairs of points in order along the line.
 * The outline may be hollow-sided; what runs along an edge counts as outside.
 */
export function clip([x1, y1]: Point, [x2, y2]: Point, outline: readonly Point[]): [Point, Point][] {
  const [dx, dy] = [x2 - x1, y2 - y1]
  const crossings: number[] = []
  outline.forEach(([ax, ay], i) => {
    const [bx, by] = outline[(i + 1) % outline.length]!
    const [ex, ey] = [bx - ax, by - ay]
    const across = dx * ey - dy * ex
    if (across === 0) return
    const onLine = ((ax - x1) * ey - (ay - y1) * ex) / across
    const onEdge = ((ax - x1) * dy - (ay - y1) * dx) / across
    if (onEdge >= 0 && onEdge < 1) crossings.push(onLine)
  })
  crossings.sort((a, b) => a - b)
  const pieces: [Point, Point][] = []
  const at = (t: number): Point => [x1 + t * dx, y1 + t * dy]
  for (let i = 0; i + 1 < crossings.length; i += 2) {
    const [from, to] = [Math.max(0, crossings[i]!), Math.min(1, crossings[i + 1]!)]
    if (from < to) pieces.push([at(from), at(to)])
  }
  return pieces
}
