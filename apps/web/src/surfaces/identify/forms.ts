import { floor, width } from '../sketch.tsx'
import { textures } from '../tuft.tsx'

/** How each form is drawn: as the kind that is best known by it, or by itself where two kinds share it. */
export const forms: Readonly<Record<string, string>> = {
  dust_film: textures.film_diatom,
  slimy_sheet: textures.cyano,
  slime_lumps_strings: textures.dino,
  loose_hair: textures.hair_green,
  short_tuft: textures.turf,
  feather: textures.bryopsis,
  ball: textures.bubble,
  cotton_puff: textures.red_cotton,
  runner_with_fronds: textures.caulerpa,
  flat_blade: textures.macro,
  bushy_branches: [0.2, 0.5, 0.8]
    .map((along) => along * width)
    .map((x) => `M${x} ${floor}v-12l-3 -9m3 9l3 -9m-3 13l-8 -7l-1 -6m1 6l4 -5m4 12l8 -7l1 -6m-1 6l-4 -5`)
    .join(''),
  soft_lobes: textures.brown_crust_lobe,
  hard_crust: textures.coralline,
  animal_body: textures.not_algae,
}
