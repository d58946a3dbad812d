/* The forms of packages/ecosystem/src/forms, written a second time in C so that the comparison does not
   share their code. Names and order of arguments are those of the formulas. */
#include <math.h>

static inline double monod(double c, double half) { return c + half > 0 ? c / (c + half) : 0; }
static inline double q10(double factor, double temperature) { return pow(factor, (temperature - 25) / 10); }
static inline double warmth(double factor, double temperature, double best) {
  return temperature < best ? pow(factor, (temperature - best) / 10) : 1;
}
static inline double droop(double quota, double least, double fed) {
  if (quota <= least) return 0;
  if (quota >= fed) return 1;
  return (1 - least / quota) / (1 - least / fed);
}
static inline double freundlich(double c, double reference, double exponent) {
  if (c <= 0) return 0;
  if (c >= 0.05) return pow(c / reference, exponent);
  return pow(0.05 / reference, exponent) * c / 0.05;
}
static inline double throughCanopy(double depth) { return depth > 0 ? exp(-depth) : 1; }
static inline double filmCover(double mass, double hiding) { return 1 - exp((-3 * mass) / hiding); }
static inline double lightSaturation(double light, double saturation) { return tanh(light / saturation); }
static inline double selfShaded(double light, double depth) {
  return depth < 1e-6 ? light : light * -expm1(-depth) / depth;
}
static inline double inhibited(double c, double half) { return half / (half + c); }
static inline double fallingLine(double height, double full, double limit, double least) {
  if (height <= full) return 1;
  if (height >= limit) return least;
  return 1 - (1 - least) * (height - full) / (limit - full);
}
static inline double positive(double value) { return value > 0 ? value : 0; }
static inline double part(double value, double whole) { return whole > 0 ? value / whole : 0; }
static inline double least(double a, double b) { return fmin(a, b); }
static inline double most(double a, double b) { return fmax(a, b); }
