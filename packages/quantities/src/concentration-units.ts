/** As kits print them: ppm stands for mg/L and ppb for µg/L, though sea water is 2 to 3 % heavier. */
const massUnits = { 'mg/L': 1, ppm: 1, 'µg/L': 1e-3, ppb: 1e-3, 'mg/kg': 1, 'µg/kg': 1e-3 } as const
const molarUnits = { 'µmol/L': 1e-3, 'mmol/L': 1, 'µmol/kg': 1e-3, 'mmol/kg': 1 } as const

export type ConcentrationUnit = keyof typeof massUnits | keyof typeof molarUnits

export const concentrationUnits = [
  ...Object.keys(massUnits),
  ...Object.keys(molarUnits),
] as readonly ConcentrationUnit[]

/** Whether the unit counts moles, and so asks for no form. */
export function isMolar(unit: ConcentrationUnit): unit is keyof typeof molarUnits {
  return Object.hasOwn(molarUnits, unit)
}

/** Whether the unit is by the kilogram of water, and so asks for its density. */
export function isByWeight(unit: ConcentrationUnit): boolean {
  return unit.endsWith('/kg')
}

/** mg or mmol in 1 of the unit, by the litre or by the kilogram. */
export function sizeOf(unit: ConcentrationUnit): number {
  return isMolar(unit) ? molarUnits[unit] : massUnits[unit]
}

/** 'mg/l', 'ug/L', 'umol kg-1', 'µM' and their like; only in µM and mM do capitals count. */
export function concentrationUnit(written: string): ConcentrationUnit | undefined {
  const name = written.replace(/\s/g, '')
  if (/^[uµμ]M$/.test(name)) return 'µmol/L'
  if (name === 'mM') return 'mmol/L'
  const spelled = name
    .toLowerCase()
    .replace(/^(?:[uμ]|mc(?=g))/, 'µ')
    .replace(/[·*]?(l|kg)(?:⁻¹|\^?-1)$/, '/$1')
    .replace(/per(?=(?:l|kg)$)/, '/')
    .replace(/\/l(?:it(?:re|er))?$/, '/L')
  return concentrationUnits.find((unit) => unit === spelled)
}
