import {type Inline, inline} from './inline.ts'
import type {Fact, FactPart, Facts} from './nodes.ts'

/** Write facts, each a name and what it is: `['Scale length', length(616, plan)]`. A definition list on the page. */
export function facts(rows: readonly (readonly [string, ...Inline[]])[]): Facts {
  return {type: 'facts', data: {hName: 'dl'}, children: rows.map(oneFact)}
}

function oneFact([name, ...value]: readonly [string, ...Inline[]]): Fact {
  return {type: 'fact', data: {hName: 'div'}, children: [part('dt', [name]), part('dd', value)]}
}

function part(hName: 'dt' | 'dd', content: readonly Inline[]): FactPart {
  return {type: 'factPart', data: {hName}, children: inline(content)}
}
