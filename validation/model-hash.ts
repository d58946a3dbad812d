import { createHash } from 'node:crypto'
import { goldenYear } from '@holdfast/ecosystem/testing/golden-year'
import { facts } from '@holdfast/facts'

/**
 * What the model is, in twelve signs: they move with every fact of the catalogue, and with every formula and step
 * that a year of the reef goes through.
 */
export const modelHash = (): string =>
  createHash('sha256')
    .update(JSON.stringify(facts()))
    .update(goldenYear([0, 1]).join(' '))
    .digest('hex')
    .slice(0, 12)
