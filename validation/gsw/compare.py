"""What the TEOS-10 library gives at points read as JSON from stdin; JSON to stdout, one list a quantity."""

import json
import sys

import gsw
import numpy as np

points = json.load(sys.stdin)
S, t, p, C = (np.array([point[name] for point in points], dtype=float) for name in ("S", "t", "p", "C"))
absolute = gsw.SR_from_SP(S)
answers = {
    "absolute_salinity": absolute,
    "density_at_surface": gsw.rho_t_exact(absolute, t, 0),
    "density_75_terms": gsw.rho(absolute, gsw.CT_from_t(absolute, t, 0), 0),
    "density_at_pressure": gsw.rho_t_exact(absolute, t, p),
    # Millero 1978 is for water saturated with air: the last argument.
    "freezing_point": gsw.t_freezing(absolute, 0, 1),
    "oxygen_saturation": gsw.O2sol_SP_pt(S, t),
    "salinity_of_conductivity": gsw.SP_from_C(C, t, p),
    "conductivity": gsw.C_from_SP(S, t, p),
}
json.dump({"version": gsw.__version__, "answers": {name: list(map(float, answers[name])) for name in answers}}, sys.stdout)
