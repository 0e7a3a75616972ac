import {getDocument, OPS} from 'pdfjs-dist/legacy/build/pdf.mjs'

type Point = [number, number]
type Matrix = readonly number[]

/** What a PDF library finds on one sheet: in mm from its upper left corner, y down. */
export interface ReadSheet {
  widthMm: number
  heightMm: number
  /** `cut` where what lies outside the window is cut off. */
  lines: {from: Point; to: Point; dashed: boolean; widthMm: number; cut: boolean}[]
  rings: {centre: Point; radiusMm: number; dashed: boolean}[]
  texts: {at: Point; text: string}[]
  /** The window that everything but the foot is cut off at. */
  window: {x: number; y: number; width: number; height: number} | undefined
}

const mmPerPoint = 25.4 / 72

const times = (m: Matrix, n: Matrix): Matrix => [
  m[0]! * n[0]! + m[2]! * n[1]!,
  m[1]! * n[0]! + m[3]! * n[1]!,
  m[0]! * n[2]! + m[2]! * n[3]!,
  m[1]! * n[2]! + m[3]! * n[3]!,
  m[0]! * n[4]! + m[2]! * n[5]! + m[4]!,
  m[1]! * n[4]! + m[3]! * n[5]! + m[5]!,
]

/** Read the sheets of a PDF back with pdf.js: each straight line, each ring, each text. */
export async function readPdf(bytes: Uint8Array): Promise<ReadSheet[]> {
  const document = await getDocument({data: bytes.slice(), verbosity: 0}).promise
  const sheets: ReadSheet[] = []
  for (let number = 1; number <= document.numPages; number++) {
    const page = await document.getPage(number)
    const [left, low, right, high] = page.view as [number, number, number, number]
    const sheet: ReadSheet = {
      widthMm: (right - left) * mmPerPoint,
      heightMm: (high - low) * mmPerPoint,
      lines: [],
      rings: [],
      texts: [],
      window: undefined,
    }
    const place = (m: Matrix, x: number, y: number): Point => [
      (m[0]! * x + m[2]! * y + m[4]! - left) * mmPerPoint,
      (high - (m[1]! * x + m[3]! * y + m[5]!)) * mmPerPoint,
    ]
    const {fnArray, argsArray} = await page.getOperatorList()
    let state: {matrix: Matrix; dash: number; width: number; cut: boolean} = {
      matrix: [1, 0, 0, 1, 0, 0],
      dash: 0,
      width: 1,
      cut: false,
    }
    const kept: (typeof state)[] = []
    let traced: {segments: [Point, Point][]; curves: Point[][]; box?: Point[]} = {segments: [], curves: []}
    fnArray.forEach((fn: number, i: number) => {
      const args = argsArray[i]
      if (fn === OPS.save) kept.push(state)
      else if (fn === OPS.restore) state = kept.pop()!
      else if (fn === OPS.transform) state = {...state, matrix: times(state.matrix, args)}
      else if (fn === OPS.setDash) state = {...state, dash: args[0].length}
      else if (fn === OPS.setLineWidth) state = {...state, width: args[0]}
      else if (fn === OPS.constructPath) traced = trace(args, (x, y) => place(state.matrix, x, y))
      else if (fn === OPS.clip && traced.box) {
        const [[x1, y1], [x2, y2]] = traced.box as [Point, Point]
        state = {...state, cut: true}
        sheet.window = {
          x: Math.min(x1, x2),
          y: Math.min(y1, y2),
          width: Math.abs(x2 - x1),
          height: Math.abs(y2 - y1),
        }
      } else if (fn === OPS.stroke || fn === OPS.closeStroke) {
        const dashed = state.dash > 0
        for (const [from, to] of traced.segments)
          sheet.lines.push({
            from,
            to,
            dashed,
            widthMm: state.width * Math.abs(state.matrix[0]!) * mmPerPoint,
            cut: state.cut,
          })
        if (traced.curves.length === 4) sheet.rings.push({...ringOf(traced.curves), dashed})
      }
    })
    for (const item of (await page.getTextContent()).items)
      if ('str' in item && item.str.trim())
        sheet.texts.push({
          at: place([1, 0, 0, 1, 0, 0], item.transform[4], item.transform[5]),
          text: item.str,
        })
    sheets.push(sheet)
  }
  return sheets
}

function trace([fns, numbers]: [number[], number[]], place: (x: number, y: number) => Point) {
  const segments: [Point, Point][] = []
  const curves: Point[][] = []
  let box: Point[] | undefined
  let at: Point = [0, 0]
  let start: Point = [0, 0]
  let k = 0
  const next = () => place(numbers[k++]!, numbers[k++]!)
  for (const fn of fns) {
    if (fn === OPS.moveTo) start = at = next()
    else if (fn === OPS.lineTo) {
      const to = next()
      segments.push([at, to])
      at = to
    } else if (fn === OPS.curveTo) {
      const points = [next(), next(), next()]
      curves.push([at, ...points])
      at = points[2]!
    } else if (fn === OPS.closePath) {
      if (Math.hypot(start[0] - at[0], start[1] - at[1]) > 1e-6 && curves.length === 0)
        segments.push([at, start])
      at = start
    } else if (fn === OPS.rectangle) {
      const [x, y, width, height] = [numbers[k++]!, numbers[k++]!, numbers[k++]!, numbers[k++]!]
      box = [place(x, y), place(x + width, y + height)]
    }
  }
  return {segments, curves, ...(box && {box})}
}

/** A ring drawn as four quarter curves: its centre and radius from where they meet. */
function ringOf(curves: readonly Point[][]): {centre: Point; radiusMm: number} {
  const corners = curves.map((curve) => curve[0]!)
  const xs = corners.map(([x]) => x)
  const ys = corners.map(([, y]) => y)
  const centre: Point = [(Math.min(...xs) + Math.max(...xs)) / 2, (Math.min(...ys) + Math.max(...ys)) / 2]
  return {centre, radiusMm: (Math.max(...xs) - Math.min(...xs)) / 2}
}
