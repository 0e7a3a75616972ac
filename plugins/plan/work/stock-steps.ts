import type {Part} from '../design-parts.ts'
import {glueWait, type SawnPart, type StepDraft, type WorkFacts, type WorkGroup} from './step.ts'

/** One clamp for so much of a joint (mm): common practice, no source. */
const clampEveryMm = 150

/** Mill, rip, glue and plane what the neck is made of; short parts come off a long strip, and last. */
export const stockSteps: WorkGroup = (facts) => {
  const {values, design} = facts
  const parts = design.cuts?.parts ?? []
  const small = parts.filter(({isSmall}) => isSmall)
  const large = parts.filter(({isSmall}) => !isSmall)
  return [
    ...(values.neck ? milled(values.saw?.plane?.mm, large) : []),
    ...(small.length > 0
      ? [
          {
            id: 'rip-small',
            kind: 'rip' as const,
            facts: {of: 'rip-small' as const, setting: {sawn: small.map(sawn)}},
            tool: 'rip saw' as const,
            after: ['rip'],
          },
        ]
      : []),
    ...glueUp(facts),
    ...(values.neck ? [planed(facts)] : []),
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

const sawn = ({name, lengthMm, widthMm}: Part): SawnPart => ({name, lengthMm, widthMm})

function glueUp(facts: WorkFacts): StepDraft[] {
  const {neck} = facts.design
  const layers = (neck?.layup?.layers ?? []).filter(
    ({of, beforeScarf}) => beforeScarf && of.startsWith('neck'),
  )
  if (layers.length < 2 && !layers.some(({strips = 1}) => strips > 1)) return []
  const {waitH, clampsH} = glueWait(facts)
  const lengthMm = neck?.budget?.blankMm
  const clamps = lengthMm === undefined ? undefined : Math.ceil(lengthMm / clampEveryMm) + 1
  return [
    {
      id: 'glue-up',
      kind: 'glue-up',
      facts: {of: 'glue-up', setting: {clamps, clampsH}},
      tool: 'clamps',
      waitH,
      after: ['mill', 'rip'],
    },
  ]
}

function planed({values, design}: WorkFacts): StepDraft {
  const {scarf, layup} = design.neck ?? {}
  const stickMm = (scarf?.thicknessMm ?? layup?.stickMm ?? values.neck?.thickness?.mm) || undefined
  const boardMm = values.fingerboard?.thickness?.mm || undefined
  return {
    id: 'plane',
    kind: 'plane',
    facts: {of: 'plane', setting: stickMm || boardMm ? {stickMm, boardMm} : undefined},
    tool: 'planer',
    after: ['mill', 'rip', 'glue-up'],
  }
}
