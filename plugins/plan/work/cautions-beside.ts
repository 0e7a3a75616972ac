import {type HazardRow, hazards} from '../../tables/hazards.ts'
import {placeOf} from '../cautions/bench-facts.ts'
import type {Caution} from '../cautions/cautions.ts'
import type {StepDraft} from './step.ts'
import type {WorkFacts} from './work-facts.ts'

const rows: Readonly<Record<string, HazardRow | undefined>> = hazards

/**
 * Name the cautions that belong beside a step, the worst first: those of its kind, and of these only where the hazard
 * is in hand, as the wood that is cut, the finish that is wiped on, the part that is short or thin.
 */
export function cautionsBeside(
  cautions: readonly Caution[],
  facts: WorkFacts,
): (step: StepDraft) => string[] {
  const ofKind = new Map<string, Caution[]>()
  for (const one of cautions)
    for (const kind of rows[one.id]?.steps ?? []) {
      const known = ofKind.get(kind)
      if (known) known.push(one)
      else ofKind.set(kind, [one])
    }
  return (step) => {
    const here = ofKind.get(step.kind)
    if (!here) return []
    const inHand = placesInHand(step, facts)
    return here.flatMap((one) => (isInHand(one, step, inHand) ? [one.id] : []))
  }
}

function isInHand(caution: Caution, {id, facts}: StepDraft, inHand: readonly string[]): boolean {
  if ('does' in caution) return true
  const {here} = caution
  if (caution.id === 'planer' && facts.of === 'rip') return false
  if (caution.id === 'short-part') return shortSteps.includes(id)
  if ('kinds' in here) return facts.of === 'finish' && here.kinds.includes(facts.name)
  const met = (places: readonly string[]) => places.some((place) => inHand.includes(place))
  if ('woods' in here) return here.woods.some(({places}) => met(places))
  if ('sheets' in here) return here.sheets.some(({places}) => met(places))
  if ('places' in here) return met(here.places)
  if ('glue' in here && facts.of === 'fasten') return facts.by === 'glue'
  return true
}

const shortSteps = ['rip-small', 'trim']
const neckWoods = ['neck', 'neck.cap', 'head.plate', 'fingerboard']
const joint = ['neck', 'box']

/** The places, as paths of the build file, whose wood is cut or glued in a step. */
function placesInHand({id, facts: {of}}: StepDraft, {design, hasBoard}: WorkFacts): readonly string[] {
  const parts = design.cuts?.parts
  if (of === 'mill' || of === 'rip' || of === 'plane' || shortSteps.includes(id)) {
    const isShort = shortSteps.includes(id)
    const here = (parts ?? []).filter(({isSmall}) => of === 'mill' || isSmall === isShort)
    return parts ? here.map(placeOf) : neckWoods
  }
  if (of === 'fit-parts') return (parts ?? []).map(placeOf)
  if (of === 'slot-frets') return hasBoard ? ['fingerboard'] : ['neck', 'neck.cap']
  return places[of] ?? []
}

/** What is in hand in steps that always take the same. */
const places: Readonly<Partial<Record<StepDraft['facts']['of'], readonly string[]>>> = {
  'box-prepare': ['box', 'box.top'],
  'box-strip': ['box.top'],
  'cut-down': ['neck', 'neck.cap', 'fingerboard'],
  'drill-box': ['box'],
  'drill-head': ['neck', 'head.plate'],
  'drill-neck': ['neck', 'neck.cap', 'fingerboard'],
  'drill-top': ['box.top'],
  fasten: joint,
  'fit-blocks': ['box', 'box.blocks'],
  'glue-head': ['neck'],
  'glue-up': ['neck'],
  'glue-up-board': ['neck', 'fingerboard'],
  'glue-up-face': ['neck', 'neck.cap'],
  'glue-up-plate': ['neck', 'head.plate'],
  'notch-box': ['box', 'box.top'],
  'plane-faces': ['neck'],
  'plane-sides': ['neck', 'neck.cap', 'fingerboard'],
  'round-over': ['neck'],
  sand: [...neckWoods, 'box', 'box.top'],
  'saw-scarf': ['neck'],
  'shape-head': ['neck', 'head.plate'],
}
