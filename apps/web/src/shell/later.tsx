import type { ComponentType } from 'preact'
import { useEffect, useState } from 'preact/hooks'

interface LaterOf<Props> {
  readonly load: () => Promise<ComponentType<Props>>
  /** What the part is given. */
  readonly given: Props
}

/** A part of the page that is fetched when it is shown. */
export function Later<Props extends object>({ load, given }: LaterOf<Props>) {
  const [part, setPart] = useState<{ readonly Part: ComponentType<Props> } | undefined>()
  const [trouble, setTrouble] = useState('')
  useEffect(() => {
    load().then(
      (Part) => setPart({ Part }),
      (error: unknown) => setTrouble(error instanceof Error ? error.message : String(error)),
    )
  }, [load])
  if (trouble)
    return (
      <p class="issue" role="alert">
        This part of the page could not be fetched: {trouble}. Reload the page.
      </p>
    )
  return part ? <part.Part {...given} /> : null
}
