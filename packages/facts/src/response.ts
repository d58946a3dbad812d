import list from './data/responses.json' with { type: 'json' }

/**
 * What one would do about some kinds: those of one response need not be told apart before one acts.
 * Titles, kinds and costs are estimates of Holdfast, from the ladders of measures that keepers climb.
 */
export interface Response {
  readonly key: string
  readonly title: string
  readonly does: string
  readonly kinds: readonly string[]
  /** Cautions that stand before it. */
  readonly cautions?: readonly string[]
  /**
   * What it costs to do this to a kind that another response was meant for, by that response. 1 where it is
   * not named: a month lost. Under 1: it helps a little; over 1: it harms animals, people or the rock.
   */
  readonly costsInsteadOf?: Readonly<Record<string, number>>
}

/** What one would do, for the kinds of the field key. */
export const responses = (): readonly Response[] => list as readonly Response[]
