declare const unit: unique symbol

/** A number that is known to be in a unit; it reckons as any number, and the result is a plain one. */
export type In<U extends string> = number & { readonly [unit]?: U }

export type Litres = In<'L'>
export type Grams = In<'g'>
export type SquareMetres = In<'m²'>
export type Centimetres = In<'cm'>
export type DegreesCelsius = In<'°C'>
export type Days = In<'d'>
export type LitresPerHour = In<'L h⁻¹'>
export type MilligramsPerLitre = In<'mg L⁻¹'>
export type MilliequivalentsPerLitre = In<'meq L⁻¹'>
export type KilogramsPerLitre = In<'kg L⁻¹'>
export type Watts = In<'W'>
