/* Integrators that the shipped one is measured against, on a model's equations or on a published stiff problem.
   Usage: methods METHOD RTOL REPEATS exact|sparse                          of a model (compiled with -DMODEL)
          methods METHOD RTOL STEP PROBLEM LAST_DAY STARTS TOLERANCES       of a problem; STEP 0 adapts the steps
   Prints "seconds (of the processor) steps rejected evaluations jacobians factorizations", then the states at each sample, or the last. */
#include <time.h>
#ifdef MODEL
#include "equations.h"
static int edges = FLUXES, above_zero = 1, edge_from[FLUXES], edge_to[FLUXES];
static double absolute[STATES];
static void edge_flows(const double* in, double* f) {
  for (int i = 0; i < count; i++) whole[state_of[i]] = in[i];
  rates_quick(whole, settings, gathered, f);
}
static void derivatives(const double* in, double* values) {
  for (int i = 0; i < count; i++) whole[state_of[i]] = in[i];
  rates(whole);
  fill(whole, values);
}
#else
#include "stiff.h"
#endif
#include "steps.h"
#include "sparse.h"
#include "chebyshev.h"
#include "rosenbrock.h"
#include "patankar.h"

static const struct { const char* name; double (*attempt)(const double*, double, double*); double estimate_order; } methods[] = {
  {"RKC2", rkc2, 3}, {"ROCK2", rock2, 2}, {"RODAS3", rodas3, 3}, {"ROS34PW2", ros34pw2, 3}, {"MPRK22", mprk22, 2},
};
static double length;

/* Steps from a day to another. */
static void walk(int method, double* y, double from, double to, double fixed) {
  static double* next;
  if (!next) next = vector();
  int refused = 0;
  first_known = 0;
  while (from < to) {
    if (evaluations > 2000000) fail("given up after two million evaluations", method);
    const double left = to - from, parts = ceil(left / (fixed > 0 ? fixed : length) - 1e-9), h = parts > 1 ? left / parts : left;
    double error = methods[method].attempt(y, h, next);
    int below = 0;
    for (int i = 0; above_zero && i < count; i++) if (next[i] < -weight(0, i)) below = 1;
    const double pace = error > 0 ? fmin(5, fmax(0.1, 0.8 * pow(error, -1 / methods[method].estimate_order))) : 5;
    if (fixed == 0 && (!(error <= 1) || below)) {
      if (h < 1e-13 * (1 + to)) fail("no step is short enough in", method);
      rejected++;
      if (++refused > 1) doubtful = 1;
      length = h * (error <= 1 ? 0.5 : isfinite(error) ? fmin(pace, 0.9) : 0.1);
      continue;
    }
    steps++;
    accepted_since++;
    refused = 0;
    from = parts > 1 ? from + h : to;
    memcpy(y, next, count * sizeof(double));
    first_known = 0;
    if (methods[method].attempt == rkc2) { memcpy(first_slope, pending_slope, count * sizeof(double)); first_known = 1; }
    length = h < length && pace > 1 ? fmax(length, h * pace) : h * pace;
  }
}

static int method_named(const char* name) {
  for (int k = 0; k < (int)(sizeof methods / sizeof *methods); k++) if (strcmp(name, methods[k].name) == 0) return k;
  fail("no such method", 0);
  return -1;
}
static void lay_out(void) { error_of = vector(); pending_slope = vector(); flow = malloc(edges * sizeof(double)); }
static void report(struct timespec begin, int repeats) {
  struct timespec end;
  clock_gettime(CLOCK_PROCESS_CPUTIME_ID, &end);
  printf("%.6f %ld %ld %ld %ld %ld\n", (end.tv_sec - begin.tv_sec + 1e-9 * (end.tv_nsec - begin.tv_nsec)) / repeats,
    steps / repeats, rejected / repeats, evaluations / repeats, jacobians / repeats, factorizations / repeats);
}

#ifdef MODEL
/* Days of the first step after an event: phosphate finds its balance in an hour. */
static const double after_event = 0.01;

int main(int words, char** word) {
  if (words != 5) fail("usage: methods METHOD RTOL REPEATS exact|sparse", words);
  const int method = method_named(word[1]), repeats = atoi(word[3]);
  relative_tolerance = atof(word[2]);
  quick = 1;
  exact = strcmp(word[4], "exact") == 0;
  memcpy(settings, setting_values, sizeof settings);
  prepare_all(settings);
  make_pattern();
  for (int i = 0; i < count; i++) absolute[i] = tolerances[state_of[i]];
  for (int k = 0; k < FLUXES; k++) { edge_from[k] = inside(flux_from[k]); edge_to[k] = inside(flux_to[k]); }
  lay_out();
  static double kept[SAMPLES + 1][STATES], y[STATES];
  struct timespec begin;
  clock_gettime(CLOCK_PROCESS_CPUTIME_ID, &begin);
  for (int repeat = 0; repeat < repeats; repeat++) {
    memcpy(settings, setting_values, sizeof settings);
    prepare_all(settings);
    memcpy(whole, start_values, sizeof whole);
    for (int i = 0; i < count; i++) y[i] = whole[state_of[i]];
    double day = 0;
    int sample = 0;
    length = after_event;
    for (int m = 0; m <= MOMENTS; m++) {
      const double until = m < MOMENTS ? moments[m].day : last_day;
      while (day < until) {
        const double stop = sample < SAMPLES && sample_days[sample] < until ? sample_days[sample] : until;
        walk(method, y, day, stop, 0);
        day = stop;
        while (sample < SAMPLES && sample_days[sample] <= day) {
          for (int i = 0; i < count; i++) kept[sample][state_of[i]] = y[i];
          sample++;
        }
      }
      if (m == MOMENTS) break;
      for (int i = 0; i < count; i++) whole[state_of[i]] = y[i];
      happen(&moments[m], whole);
      for (int i = 0; i < count; i++) y[i] = whole[state_of[i]];
      length = fmin(length, after_event);
    }
  }
  report(begin, repeats);
  for (int k = 0; k < SAMPLES; k++)
    for (int i = 0; i < STATES; i++) printf("%.17g%c", kept[k][i], i == STATES - 1 ? '\n' : ' ');
  return 0;
}
#else
static void read_list(char* text, double* values) {
  for (int i = 0; i < count; i++) values[i] = strtod(text, &text), text += *text == ',';
}

int main(int words, char** word) {
  if (words != 8) fail("usage: methods METHOD RTOL STEP PROBLEM LAST_DAY STARTS TOLERANCES", words);
  const int method = method_named(word[1]);
  const double fixed = atof(word[3]), last = atof(word[5]);
  double y[MOST];
  relative_tolerance = atof(word[2]);
  choose_problem(word[4]);
  read_list(word[6], y);
  read_list(word[7], absolute);
  lay_out();
  struct timespec begin;
  clock_gettime(CLOCK_PROCESS_CPUTIME_ID, &begin);
  length = last * 1e-7;
  walk(method, y, 0, last, fixed);
  report(begin, 1);
  for (int i = 0; i < count; i++) printf("%.17g%c", y[i], i == count - 1 ? '\n' : ' ');
  return 0;
}
#endif
