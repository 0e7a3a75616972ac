import type {Pattern, Task} from './task.ts'

/** What all steps of solving a task share: the patterns found so far, and the effort that may still be spent. */
export interface Context {
  task: Task
  pool: Pattern[]
  effort: Effort
}

/** The same context with an allowance of so many steps. */
export const allowed = (context: Context, steps: number): Context => ({
  ...context,
  effort: new Effort(steps, context.effort),
})

/** Steps that a search may still take; counted, so that every machine finds the same plan. */
export class Effort {
  spent = 0
  readonly limit: number
  private readonly whole: Effort | undefined

  /** An allowance out of a whole ends first, and what it spends is spent there too. */
  constructor(limit: number, whole?: Effort) {
    this.limit = limit
    this.whole = whole
  }

  spend(steps: number): void {
    this.spent += steps
    this.whole?.spend(steps)
  }

  get over(): boolean {
    return this.spent >= this.limit || (this.whole?.over ?? false)
  }
}
