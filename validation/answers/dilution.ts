/** What changes with clean water do to nitrate when nothing else comes in. */
import {
  changeFractionNeeded,
  changesNeeded,
  changesToShareOfEndValue,
  concentrationAfterChanges,
  concentrationAfterContinuousExchange,
  type Dilution,
  exchangedVolumesNeeded,
  fractionReplacedByChanges,
  fractionReplacedContinuously,
} from '@holdfast/seawater'
import { eventsOf, routineChangeFraction } from '../husbandry.ts'
import {
  CannotAnswer,
  type Family,
  needed,
  numberIn,
  type Question,
  spanOf,
  textIn,
  waterVolume,
} from './answer.ts'
import { readingAt, usualValue } from './readings.ts'

const keys = [
  'from_mg_L',
  'to_mg_L',
  'n',
  'change_fraction',
  'change_volume_L',
  'mode',
  'new_water_mg_L',
  'water_L',
  'volume_L',
]

export const dilutionAnswers: Family = {
  nitrate_after_changes_mg_L: {
    unit: 'mg/L NO3',
    keys,
    answer: (question) => {
      const from = startingValue(question)
      return {
        value: isContinuous(question)
          ? concentrationAfterContinuousExchange(from, newWater(question), exchangedVolumes(question))
          : concentrationAfterChanges(from, newWater(question), changeFraction(question), changes(question)),
      }
    },
  },
  changes_needed: {
    unit: '1',
    keys,
    answer: (question) => ({ value: changesNeeded(dilution(question), changeFraction(question)) }),
  },
  single_change_fraction_needed: {
    unit: '1',
    keys,
    answer: (question) => ({ value: changeFractionNeeded(dilution(question), 1) }),
  },
  change_fraction_needed: {
    unit: '1',
    keys,
    answer: (question) => ({
      value: changeFractionNeeded(
        dilution(question),
        needed(numberIn(question.check, 'n'), 'n, how many changes'),
      ),
    }),
  },
  fraction_replaced: {
    unit: '1',
    keys,
    answer: (question) => ({
      value: isContinuous(question)
        ? fractionReplacedContinuously(exchangedVolumes(question))
        : fractionReplacedByChanges(changeFraction(question), changes(question)),
    }),
  },
  water_needed_L: { unit: 'L', keys, answer: (question) => ({ value: waterNeeded(question) }) },
  changes_to_fraction_of_equilibrium: {
    unit: '1',
    keys: ['fraction', 'change_fraction', 'change_volume_L'],
    answer: (question) => ({
      value: changesToShareOfEndValue(
        needed(numberIn(question.check, 'fraction'), 'fraction of the end value'),
        changeFraction(question),
      ),
    }),
  },
}

/** Batch: whole changes of the size given, or equal parts of the count given, or one. */
function waterNeeded(question: Question): number {
  const { check, file } = question
  const volume_L = waterVolume(file)
  const wanted = numberIn(check, 'to_mg_L')
  if (isContinuous(question)) {
    return (
      volume_L *
      (wanted === undefined ? exchangedVolumes(question) : exchangedVolumesNeeded(dilution(question)))
    )
  }
  const count = numberIn(check, 'n')
  const fraction = givenFraction(question)
  if (wanted === undefined) return changes(question) * changeFraction(question) * volume_L
  if (count !== undefined) return count * changeFractionNeeded(dilution(question), count) * volume_L
  if (fraction !== undefined) return changesNeeded(dilution(question), fraction) * fraction * volume_L
  return changeFractionNeeded(dilution(question), 1) * volume_L
}

function isContinuous({ check }: Question): boolean {
  const mode = textIn(check, 'mode') ?? 'batch'
  if (mode !== 'batch' && mode !== 'continuous')
    throw new CannotAnswer(`mode: "${mode}" is neither batch nor continuous`)
  return mode === 'continuous'
}

function startingValue({ check, file }: Question): number {
  return numberIn(check, 'from_mg_L') ?? usualValue(readingAt(file, 'nitrate'))
}

/** These sums are for clean water unless the check says what it holds. */
function newWater({ check }: Question): number {
  return numberIn(check, 'new_water_mg_L') ?? 0
}

function dilution(question: Question): Dilution {
  return {
    from: startingValue(question),
    to: needed(numberIn(question.check, 'to_mg_L'), 'to_mg_L'),
    newWater: newWater(question),
  }
}

function givenFraction({ check, file }: Question): number | undefined {
  const volume_L = numberIn(check, 'change_volume_L', 'volume_L')
  return (
    numberIn(check, 'change_fraction') ?? (volume_L === undefined ? undefined : volume_L / waterVolume(file))
  )
}

function changeFraction(question: Question): number {
  return needed(
    givenFraction(question) ?? routineChangeFraction(question.file),
    'change_fraction, or a routine of water changes',
  )
}

function changes({ check, file }: Question): number {
  const { from, to } = spanOf(file, check)
  const told = eventsOf(file, 'water change').filter(({ date }) => date >= from && date <= to).length
  return needed(numberIn(check, 'n') ?? (told === 0 ? undefined : told), 'n, how many changes')
}

/** New water over net water: what is given in litres, or as many changes as there are, run in slowly. */
function exchangedVolumes(question: Question): number {
  const litres = numberIn(question.check, 'water_L')
  if (litres !== undefined) return litres / waterVolume(question.file)
  return changeFraction(question) * (numberIn(question.check, 'n') ?? 1)
}
