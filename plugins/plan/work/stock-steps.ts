import type {Part} from '../design-parts.ts'
import {glueWait, type WorkFacts, type WorkGroup} from './step.ts'

/** One clamp for so much of a joint (mm): common practice, no source. */
const clampEveryMm = 150

/** Mill, rip, glue and plane what the neck is made of; short parts come off a long strip, and last. */
export const stockSteps: WorkGroup = (facts) => {
  const {values, design, size} = facts
  const parts = design.cuts?.parts ?? []
  const small = parts.filter(({isSmall}) => isSmall)
  const large = parts.filter(({isSmall}) => !isSmall)
  const planeMm = values.saw?.plane?.mm
  return [
    ...(values.neck
      ? [
          {
            id: 'mill',
            kind: 'mill' as const,
            does: 'One face flat, then one edge square to it.',
            tool: 'plane, or jointer',
            setting: planeMm ? `leave ${size(planeMm)} a face` : undefined,
            after: [],
            check: 'No light under straightedge and square.',
          },
          {
            id: 'rip',
            kind: 'rip' as const,
            does: 'Rip to width; crosscut to length.',
            tool: 'rip or table saw',
            setting: sawn(large, facts),
            after: ['mill'],
            check: 'Each piece bears its name.',
          },
        ]
      : []),
    ...(small.length > 0
      ? [
          {
            id: 'rip-small',
            kind: 'rip' as const,
            step: 'Cut the short parts',
            does: 'Off one long strip; the last cuts of all.',
            tool: 'rip or table saw',
            setting: sawn(small, facts),
            after: ['rip'],
            words: ['short parts', 'small parts'],
          },
        ]
      : []),
    ...glueUp(facts),
    ...(values.neck
      ? [
          {
            id: 'plane',
            kind: 'plane' as const,
            does: 'Plane to thickness.',
            tool: 'plane, or planer',
            setting: thicknesses(facts),
            after: ['mill', 'rip', 'glue-up'],
            check: 'The same at both ends and the middle.',
          },
        ]
      : []),
  ]
}

/** Say which sizes are sawn, equal ones once: `2 3/16 x 3/4 in: neck`. */
function sawn(parts: readonly Part[], {size}: WorkFacts): string | undefined {
  const counts = new Map<string, number>()
  for (const {lengthMm, widthMm, name} of parts) {
    const what = `${size(widthMm).replace(/ (in|mm)$/, '')} × ${size(lengthMm)} (${name.replace(/,? strip \d+$| \d+$/, '')})`
    counts.set(what, (counts.get(what) ?? 0) + 1)
  }
  const all = [...counts].map(([what, count]) => (count > 1 ? `${count} of ${what}` : what))
  return all.length > 0 ? all.join('; ') : undefined
}

function glueUp(facts: WorkFacts): ReturnType<WorkGroup> {
  const {neck} = facts.design
  const layers = (neck?.layup?.layers ?? []).filter(
    ({of, beforeScarf}) => beforeScarf && of.startsWith('neck'),
  )
  if (layers.length < 2 && !layers.some(({strips = 1}) => strips > 1)) return []
  const {waitH, clampsStay} = glueWait(facts)
  const lengthMm = neck?.budget?.blankMm
  const clamps = lengthMm === undefined ? '' : `${Math.ceil(lengthMm / clampEveryMm) + 1} clamps and cauls, `
  return [
    {
      id: 'glue-up',
      kind: 'glue-up',
      does: 'Dry-fit, then glue the layers.',
      tool: 'glue and clamps',
      setting: `${clamps}on for ${clampsStay}`,
      waitH,
      after: ['mill', 'rip'],
      check: 'A thin bead along every seam.',
    },
  ]
}

function thicknesses({values, design, size}: WorkFacts): string | undefined {
  const {scarf, layup} = design.neck ?? {}
  const stickMm = scarf?.thicknessMm ?? layup?.stickMm ?? values.neck?.thickness?.mm
  const boardMm = values.fingerboard?.thickness?.mm
  const all = [
    ...(stickMm ? [`stick ${size(stickMm)}`] : []),
    ...(boardMm ? [`fingerboard ${size(boardMm)}`] : []),
  ]
  return all.length > 0 ? all.join(', ') : undefined
}
