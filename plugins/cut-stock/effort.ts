/** Steps that a search may still take; counted, so that every machine finds the same plan. */
export class Effort {
  spent = 0
  limit: number

  constructor(limit: number) {
    this.limit = limit
  }

  spend(steps: number): void {
    this.spent += steps
  }

  get over(): boolean {
    return this.spent >= this.limit
  }

  /** An allowance out of this one: it ends first, and what it spends is spent here too. */
  part(steps: number): Effort {
    return new Part(this, steps)
  }
}

class Part extends Effort {
  private readonly whole: Effort

  constructor(whole: Effort, steps: number) {
    super(steps)
    this.whole = whole
  }

  override spend(steps: number): void {
    this.spent += steps
    this.whole.spend(steps)
  }

  override get over(): boolean {
    return this.spent >= this.limit || this.whole.over
  }
}
