import { useMemo, useState } from 'preact/hooks'
import { fromAddress, intoAddress } from '../shell/address.ts'
import type { SystemData } from '../shell/system-data.ts'
import { asToday, isSame, type Setting, type Settings, settings, type Today, todayOf } from './settings.ts'
import { keepVariants, type Variant, variantsKept } from './variants/kept.ts'

/** A setting in the address of the page, so that what was tried can be shared. */
const inAddress: Readonly<Record<Setting, string>> = {
  feed_g: 'feed',
  water_L: 'volume',
  water_days: 'every',
  media_g: 'media',
  media_days: 'filled',
}

export interface LeversInHand {
  readonly today: Today
  readonly set: Settings
  readonly isMoved: boolean
  /** While a handle moves. */
  readonly move: (set: Settings) => void
  /** On release: the address follows. */
  readonly settle: (set: Settings) => void
  readonly variants: readonly Variant[]
  readonly keepVariants: (variants: readonly Variant[]) => void
}

/** The levers as they stand, and the variants that this browser keeps. */
export function useLevers(data: SystemData): LeversInHand {
  const today = useMemo(() => todayOf(data), [data])
  const start = useMemo(() => asToday(today), [today])
  const [set, move] = useState(() => fromAddressOr(start))
  const [variants, setVariants] = useState(() => variantsKept(data.system.id))
  return {
    today,
    set,
    isMoved: !isSame(set, start),
    move,
    settle: (next) => {
      move(next)
      intoAddress(
        Object.fromEntries(
          settings.map((key) => [inAddress[key], next[key] === start[key] ? undefined : String(next[key])]),
        ),
      )
    },
    variants,
    keepVariants: (next) => {
      setVariants(next)
      keepVariants(data.system.id, next)
    },
  }
}

/** What the address says, where that is possible: days come after each other, and nothing is less than none. */
function fromAddressOr(start: Settings): Settings {
  const read = (key: Setting) => {
    const said = fromAddress(inAddress[key])
    const value = said === null ? Number.NaN : Number(said)
    const least = key === 'water_days' || key === 'media_days' ? 1 : 0
    return value >= least && Number.isFinite(value) ? value : start[key]
  }
  return {
    feed_g: read('feed_g'),
    water_L: read('water_L'),
    water_days: read('water_days'),
    media_g: read('media_g'),
    media_days: read('media_days'),
  }
}
