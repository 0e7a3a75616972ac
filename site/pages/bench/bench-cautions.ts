import type {Element, ElementContent} from 'hast'
import {h} from 'hastscript'
import type {Plan} from '../../../plugins/plan/shape/plan.ts'
import type {Step} from '../../../plugins/plan/shape/work.ts'
import {cautionSigns} from '../../../plugins/tables/hazards.ts'

const signs: Readonly<Record<string, {name: string; does: string} | undefined>> = cautionSigns

/** What stands beside a step: cautions met first here, with what to do, and by name those met before. */
export interface Beside {
  first: Element | undefined
  again: ElementContent[]
}

/** Put each caution beside the steps that it belongs to; `others` are those that belong to no step of this build. */
export function benchCautions({work = [], cautions = []}: Plan): {
  others: Element[]
  beside: (step: Step) => Beside
} {
  const firstAt = new Map<string, string>()
  for (const {id, cautions: ids} of work) for (const one of ids) if (!firstAt.has(one)) firstAt.set(one, id)
  const others = cautions.filter(({id}) => !firstAt.has(id))
  return {
    others: others.map(({id, hazard, does}) =>
      id.startsWith('own-') ? mind([h('strong', does)]) : mind(told(id, signs[id]?.does ?? hazard)),
    ),
    beside: ({id: step, cautions: ids}) => {
      const isFirst = (id: string) => firstAt.get(id) === step
      const first = ids
        .filter(isFirst)
        .flatMap((id, at) => [...after(at, '; '), ...told(id, signs[id]?.does)])
      const again = ids.filter((id) => !isFirst(id)).flatMap((id, at) => [...after(at, ', '), ...told(id)])
      return {first: first.length > 0 ? mind(first) : undefined, again}
    },
  }
}

function told(id: string, does?: string): ElementContent[] {
  const name = h('strong', signs[id]?.name ?? id)
  return does === undefined ? [name] : [name, {type: 'text', value: `: ${does}`}]
}

const after = (at: number, sign: string): ElementContent[] => (at > 0 ? [{type: 'text', value: sign}] : [])

function mind(content: ElementContent[]): Element {
  return h('p.mind', [...content, {type: 'text', value: '.'}])
}
