import {glueWait, holesOn, type StepDraft, stationsOf, type WorkFacts, type WorkGroup} from './step.ts'

/** Saw and glue the scarf, glue a plate on, shape the head and drill it. */
export const headSteps: WorkGroup = (facts) => {
  const {values, design} = facts
  return [
    ...scarf(facts),
    ...(values.head?.plate
      ? [
          {
            id: 'glue-up-plate',
            kind: 'glue-up' as const,
            step: 'Glue the head’s plate on',
            does: 'Pads under the clamps.',
            tool: 'glue and clamps',
            waitH: glueWait(facts).waitH,
            after: ['plane', 'glue-head'],
            words: ['plate'],
          },
        ]
      : []),
    ...(design.neck?.head ? [shape(facts)] : []),
    ...holesOn(facts, ['head'], {
      id: 'drill-head',
      kind: 'drill-head',
      does: 'Small hole from the face, then to size from both.',
      after: ['shape-head', 'glue-head'],
      check: 'A post turns without shaking.',
    }),
  ]
}

function scarf(facts: WorkFacts): StepDraft[] {
  const {design, size} = facts
  const {scarf: sawn} = design.neck ?? {}
  if (!sawn) return []
  const {angleDeg, fromSquareDeg, slope, faceMm, runMm} = sawn
  const degrees = (deg: number) => `${Number(deg.toFixed(1))}°`
  const {waitH, clampsStay} = glueWait(facts)
  return [
    {
      id: 'saw-scarf',
      kind: 'saw-scarf',
      does: 'In a carrier; then plane both slopes as one.',
      tool: 'saw and carrier, plane',
      setting: `${degrees(angleDeg)} to the stick (${degrees(fromSquareDeg)} from square, 1 in ${Number(slope.toFixed(1))}), blade tilt 0°, over ${size(runMm)}`,
      stations: stationsOf(design.layout, ['slope']),
      after: ['plane', 'glue-up', 'rip'],
      check: `The sawn face reads ${size(faceMm)}.`,
    },
    {
      id: 'glue-head',
      kind: 'glue-head',
      does: 'Turn the cut piece over, its slope under the neck’s end; a brad at each end.',
      tool: 'glue and clamps',
      setting: `on for ${clampsStay}`,
      waitH,
      after: ['saw-scarf'],
      check: 'Straight along both edges.',
    },
  ]
}

function shape({values, design, size}: WorkFacts): StepDraft {
  const {joint, angleDeg, thicknessMm, retainer} = design.neck!.head!
  const dropMm = values.head?.drop?.mm ?? 0
  const first =
    joint === 'solid'
      ? `Saw the head out of the solid, ${angleDeg}° back; `
      : joint === 'straight' && dropMm > 0
        ? `Cut its face down ${size(dropMm)}; `
        : ''
  const words = `${first}plane to thickness, saw the outline.`
  return {
    id: 'shape-head',
    kind: 'shape-head',
    does: words.charAt(0).toUpperCase() + words.slice(1),
    tool: 'saw, plane and file',
    setting: `${size(thicknessMm)} thick${retainer ? `; a ${retainer} holds the strings down` : ''}`,
    stations: stationsOf(design.layout, ['head end']),
    after: ['plane-sides', 'plane', 'glue-head', 'glue-up-plate'],
    check: 'Face and back are parallel.',
  }
}
