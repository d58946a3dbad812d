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
    .map((x) => `M${x} ${floor}v-10l-6 -9m6 9l6 -9m-6 4l-3 -9m3 5l3 -9m-9 2l-4 -2m16 2l4 -2`)
    .join(''),
  soft_lobes: textures.brown_crust_lobe,
  hard_crust: textures.coralline,
  animal_body: textures.not_algae,
}
