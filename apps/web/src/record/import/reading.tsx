import { useEffect, useState } from 'preact/hooks'
import { speak } from '../../shell/spoken.ts'
import type { Stage } from './protocol.ts'

interface ReadingOf {
  readonly stage: Stage | undefined
  readonly isLong: boolean
  readonly onStop: () => void
}

const words: Readonly<Record<Stage, string>> = {
  reading: 'Reading the sheet',
  comparing: 'Asking the log what it has already',
}

/** Says that a sheet is being read and for how long, once that takes over a second, and stops it. */
export function Reading({ stage, isLong, onStop }: ReadingOf) {
  const [seconds, setSeconds] = useState(1)
  useEffect(() => {
    setSeconds(1)
    if (!isLong) return
    speak('Reading the sheet.')
    const timer = setInterval(() => setSeconds((before) => before + 1), 1000)
    return () => clearInterval(timer)
  }, [isLong])
  if (stage === undefined || !isLong) return null
  return (
    <div class="working reading">
      <span>
        {words[stage]}, for {seconds === 1 ? 'one second' : `${seconds} seconds`}.
      </span>
      <progress aria-label={words[stage]} />
      <button type="button" class="key" onClick={onStop}>
        Stop it
      </button>
    </div>
  )
}
