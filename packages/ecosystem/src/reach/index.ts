export { type Intake, intakes, needLeft } from './intake.ts'
export { tasteAtHeight } from './taste-at-height.ts'
export { type PlaceWeek, placeKey, placesBetween, type WeekQuestion, weekOf } from './week.ts'
export { carriedOver, parameterOf, type World } from './world.ts'
