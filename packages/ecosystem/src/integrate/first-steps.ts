/**
 * How long the first step after each kind of event may be, by the last time it happened: a dose asks for far shorter
 * steps than went before, and every one that is tried too long is worked out for nothing.
 */
export class FirstSteps {
  private readonly known = new Map<string, number>()
  private kind: string | undefined

  /** Sets out after events of a kind: the step to try, which is as before where these are new. */
  after(kind: string, before: number): number {
    this.kind = kind
    return this.known.get(kind) ?? before
  }

  /** A step was taken, and by its error the next may be so long. */
  took(step: number): void {
    if (this.kind === undefined) return
    this.known.set(this.kind, step)
    this.kind = undefined
  }
}
