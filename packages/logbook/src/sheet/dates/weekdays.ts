import { plain } from '../words/plain.ts'

/** Monday is 1. Names and short forms in English, German, French, Spanish, Italian, Dutch. */
const names: readonly string[] = [
  'monday mon mo montag lundi lun lunes lunedi maandag',
  'tuesday tue tues tu dienstag di mardi mar martes martedi dinsdag din',
  'wednesday wed we mittwoch mi mercredi mer miercoles mie mercoledi woensdag wo woe',
  'thursday thu thur thurs th donnerstag do jeudi jeu jueves jue giovedi gio donderdag don',
  'friday fri fr freitag vendredi ven viernes vie venerdi vrijdag vr vri',
  'saturday sat sa samstag sonnabend samedi sam sabado sab sabato zaterdag za zat',
  'sunday sun su sonntag so dimanche dim domingo dom domenica zondag zo zon',
]

const byName = new Map(names.flatMap((list, at) => list.split(' ').map((name) => [name, at + 1] as const)))

/** Monday to Sunday as 1 to 7, or undefined where the word is no day of the week. */
export function weekdayNamed(word: string): number | undefined {
  return byName.get(plain(word).replace(/[.,]$/, ''))
}
