import type {Part} from '../stock/part.ts'
import type {StepDraft} from './step.ts'
import type {PlanedLayer, SawnPart, TrimmedPart} from './step-facts.ts'
import {glueWait, partsOf, type WorkFacts, type WorkGroup} from './work-facts.ts'

/** One clamp for so much of a joint (mm): common practice, no source. */
const clampEveryMm = 150

/**
 * Mill, rip, plane the faces to be joined, glue and plane what the neck is made of, and strike its nut line. Short
 * parts stay on their strip, where it can be held, until they are planed and trimmed.
 */
export const stockSteps: WorkGroup = (facts) => {
  const {values, design} = facts
  const parts = design.cuts?.parts ?? []
  const small = parts.filter(({isSmall}) => isSmall)
  const large = parts.filter(({isSmall}) => !isSmall)
  return [
    ...(values.neck || parts.length > 0 ? milled(values.saw?.plane?.mm, large) : []),
    ...shortParts(small),
    ...glueUp(facts),
    ...(values.neck ? [planed(facts)] : []),
    ...struck(facts),
  ]
}

function milled(planeMm: number | undefined, parts: readonly Part[]): StepDraft[] {
  return [
    {
      id: 'mill',
      kind: 'mill',
      facts: {of: 'mill', setting: planeMm ? {planeMm} : undefined},
      tool: 'jointer',
      after: [],
    },
    {
      id: 'rip',
      kind: 'rip',
      facts: {of: 'rip', setting: parts.length > 0 ? {sawn: parts.map(sawn)} : undefined},
      tool: 'rip saw',
      after: ['mill'],
    },
  ]
}

const sawn = ({called, lengthMm, widthMm}: Part): SawnPart => ({called, lengthMm, widthMm})

function shortParts(parts: readonly Part[]): StepDraft[] {
  if (parts.length === 0) return []
  const setting = {sizes: parts.map(trimmed)}
  return [
    {
      id: 'rip-small',
      kind: 'rip',
      facts: {of: 'rip-small', setting},
      tool: 'rip saw',
      after: ['mill', 'rip'],
    },
    {id: 'trim', kind: 'trim', facts: {of: 'trim', setting}, tool: 'fret saw', after: ['rip-small']},
  ]
}

/** The size that a part comes to: of a part that the file lists, its own. */
function trimmed({called, why, lengthMm, widthMm, thicknessMm}: Part): TrimmedPart {
  const size = why === 'listed' ? {lengthMm, widthMm, thicknessMm} : why
  return {called, lengthMm: size.lengthMm, widthMm: size.widthMm, thicknessMm: size.thicknessMm}
}

function glueUp(facts: WorkFacts): StepDraft[] {
  const {neck} = facts.design
  const layers = (neck?.layup?.layers ?? []).filter(
    ({of, beforeScarf}) => beforeScarf && of.startsWith('neck'),
  )
  if (layers.length < 2 && !layers.some(({strips = 1}) => strips > 1)) return []
  const {waitH, clampsH} = glueWait(facts)
  const lengthMm = neck?.budget?.blankMm
  const clamps = lengthMm === undefined ? undefined : Math.ceil(lengthMm / clampEveryMm) + 1
  const glued = new Set(layers.map(({of}) => of))
  return [
    {
      id: 'plane-faces',
      kind: 'plane',
      facts: {of: 'plane-faces', setting: {layers: layers.map((layer) => planedLayer(layer, facts))}},
      tool: 'planer',
      after: ['mill', 'rip'],
    },
    {
      id: 'glue-up',
      kind: 'glue-up',
      facts: {of: 'glue-up', setting: {clamps, clampsH}},
      tool: 'clamps',
      parts: partsOf(facts.design, (path) => glued.has(path)),
      waitH,
      after: ['plane-faces'],
    },
  ]
}

function planedLayer(
  {of, thicknessMm, strips = 1}: {of: string; thicknessMm: number; strips?: number | undefined},
  {values: {neck}}: WorkFacts,
): PlanedLayer {
  const given = neck?.laminations?.[Number(of.split('.').at(-1)) - 1]
  const wideMm = Math.max(neck?.width?.nut?.mm ?? 0, neck?.width?.tail?.mm ?? 0)
  return {of, thicknessMm: given?.thickness?.mm ?? thicknessMm, strips, stripMm: wideMm / strips}
}

function planed({values, design}: WorkFacts): StepDraft {
  const {scarf, layup} = design.neck ?? {}
  const setting = {
    stickMm: (scarf?.thicknessMm ?? layup?.stickMm ?? values.neck?.thickness?.mm) || undefined,
    boardMm: values.fingerboard?.thickness?.mm || undefined,
    capMm: values.neck?.cap?.thickness?.mm || undefined,
  }
  return {
    id: 'plane',
    kind: 'plane',
    facts: {of: 'plane', setting: Object.values(setting).some(Boolean) ? setting : undefined},
    tool: 'planer',
    after: ['mill', 'rip', 'glue-up'],
  }
}

/**
 * Strike what all else is measured from on the planed stick, again on a face that is glued on or planed with the scarf,
 * and again on a fingerboard, unless its own slots were marked on it before.
 */
function struck({values, design, isFretted}: WorkFacts): StepDraft[] {
  if (!values.neck || !design.layout?.length) return []
  const isCovered =
    values.neck.cap !== undefined ||
    (design.neck?.layup?.layers ?? []).some(({of, beforeScarf}) => !beforeScarf && of.startsWith('neck'))
  return [
    strike('mark-lines-stick', ['plane', 'glue-up']),
    ...(isCovered || design.neck?.scarf ? [strike('mark-lines-face', ['glue-head', 'glue-up-face'])] : []),
    ...(values.fingerboard && !isFretted ? [strike('mark-lines-board', ['glue-up-board'])] : []),
  ]
}

function strike(
  of: 'mark-lines-stick' | 'mark-lines-face' | 'mark-lines-board',
  after: readonly string[],
): StepDraft {
  return {
    id: of,
    kind: 'mark-lines',
    facts: {of},
    tool: 'knife',
    after: of === 'mark-lines-stick' ? after : ['mark-lines-stick', ...after],
  }
}

/** The names of all these, for steps that are measured from the nut line. */
export const struckLines = ['mark-lines-stick', 'mark-lines-face', 'mark-lines-board']
