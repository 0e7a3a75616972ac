import type PdfDocument from 'pdfkit'
import {capitalHeight, extent, overlaps} from '../kit/extent.ts'
import {type Ink, inks} from '../kit/inks.ts'
import type {Placed, Point, Shape, Sheet, Text} from '../kit/shapes.ts'
import {plainLatin} from './plain-latin.ts'
import {pathData} from './svg.ts'

type Pdf = InstanceType<typeof PdfDocument>

const pointsPerMm = 72 / 25.4

/**
 * Print sheets as a PDF at full size. The same sheets give the same bytes: the day it says it was made is the one
 * given (ISO 8601), or none of ours. Runs on Node alone.
 */
export async function sheetsPdf(
  sheets: readonly Sheet[],
  {title, day}: {title: string; day?: string | undefined},
): Promise<Uint8Array> {
  const made = new Date(`${day ?? '2000-01-01'}T00:00:00Z`)
  const {default: Document} = await import('pdfkit')
  const doc = new Document({
    autoFirstPage: false,
    info: {Title: title, Producer: 'Nut to Bridge', Creator: 'Nut to Bridge', CreationDate: made},
  })
  const chunks: Uint8Array[] = []
  doc.on('data', (chunk: Uint8Array) => chunks.push(chunk))
  const done = new Promise<void>((resolve) => doc.on('end', resolve))
  for (const {widthMm, heightMm, content} of sheets) {
    doc.addPage({size: [widthMm * pointsPerMm, heightMm * pointsPerMm], margin: 0})
    for (const placed of content) put(doc, placed)
  }
  doc.end()
  await done
  return Uint8Array.from(Buffer.concat(chunks))
}

function put(doc: Pdf, {shapes, by = [0, 0], window}: Placed): void {
  doc.save()
  doc.scale(pointsPerMm)
  if (window) doc.rect(window.x, window.y, window.width, window.height).clip()
  doc.translate(by[0], by[1])
  const seen = window && {...window, x: window.x - by[0], y: window.y - by[1]}
  for (const shape of shapes) if (!seen || overlaps(widened(shape), seen)) draw(doc, shape)
  doc.restore()
}

// A line square to the page has no area of its own.
const widened = (shape: Shape) => extent([shape], 0.5)

function draw(doc: Pdf, shape: Shape): void {
  if (shape.is === 'text') {
    write(doc, shape)
    return
  }
  trace(doc, shape)
  const {widthMm, dashMm, filled}: Ink = inks[shape.ink]
  if (filled) {
    doc.fill('black')
    return
  }
  doc.lineWidth(widthMm)
  // Its types know a single length; lists are as old as the method.
  if (dashMm) doc.dash([...dashMm] as unknown as number, {})
  else doc.undash()
  doc.stroke('black')
}

function trace(doc: Pdf, shape: Exclude<Shape, Text>): void {
  if (shape.is === 'circle') {
    doc.circle(...shape.centre, shape.radiusMm)
    return
  }
  if (shape.is === 'arc') {
    doc.path(pathData(shape, String))
    return
  }
  shape.points.forEach(([x, y]: Point, i) => {
    if (i === 0) doc.moveTo(x, y)
    else doc.lineTo(x, y)
  })
  if (shape.closed) doc.closePath()
}

function write(doc: Pdf, {at: [x, y], text, sizeMm, anchor, turned}: Text): void {
  const words = plainLatin(text)
  doc.font('Helvetica').fontSize(sizeMm).fillColor('black')
  const before = anchor === 'start' ? 0 : doc.widthOfString(words) / (anchor === 'end' ? 1 : 2)
  doc.save()
  if (turned) doc.rotate(-90, {origin: [x, y]})
  doc.text(words, x - before, y + (capitalHeight / 2) * sizeMm, {lineBreak: false, baseline: 'alphabetic'})
  doc.restore()
}
