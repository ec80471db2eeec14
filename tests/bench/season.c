/*
 * The season's kernel once more, in C, for the benchmark alone: what the same loop costs where a compiler of long standing makes it. season.ts writes
 * side.h: the places in the arrays, from calculators/season/flat.ts, and the numbers of the side, which are read when the program runs, as they are there.
 */
#include <math.h>
#include <stdint.h>
#include <stdio.h>
#include <stdlib.h>
#include <string.h>
#include <time.h>

#include "side.h"

static void *load(const char *folder, const char *name) {
  char path[4096];
  snprintf(path, sizeof path, "%s/%s", folder, name);
  FILE *file = fopen(path, "rb");
  if (!file) exit(1);
  fseek(file, 0, SEEK_END);
  long size = ftell(file);
  rewind(file);
  void *data = malloc(size);
  if (fread(data, 1, size, file) != (size_t)size) exit(1);
  fclose(file);
  return data;
}

static double *rows;
#define SUMS_width (ROW_width - ROW_sums)

static int is_within(int day, int from, int to) { return from <= to ? day >= from && day < to : day >= from || day < to; }
static int is_open(int paddock, int date) {
  const double *g = rows + paddock * ROW_width;
  return g[GROUND_isMeadow] == 0 || (g[GROUND_grazedFrom] > 0 && is_within(date, (int)g[GROUND_grazedFrom], (int)RULE_pull));
}
static double standing(int paddock) { return rows[paddock * ROW_width + STATE_green] + rows[paddock * ROW_width + STATE_dead]; }
static int is_short_of_feed(int date, double demand) {
  double feed = 0, amply = 1.001 * RULE_pullBelowDays * demand / RULE_usableShare;
  for (int p = 0; p < PADDOCKS; p++) {
    double above = standing(p) - RULE_stubbleLbPerAc;
    if (above <= 0 || !is_open(p, date)) continue;
    feed += above * rows[p * ROW_width + GROUND_area];
    if (feed > amply) return 0;
  }
  return RULE_usableShare * feed / demand < RULE_pullBelowDays;
}

/* The side of the benchmark takes the paddock where most stands and goes off the grass when none is ready. */
static int here = -1, is_pulled = 0;
static double days_in = 0;
static int morning(int day, int flag, int date, double demand, double *year) {
  if (flag & FLAG_turnOut) {
    here = -1;
    is_pulled = 0;
    days_in = 0;
  }
  if (!(flag & FLAG_inSeason) || is_pulled || demand <= 0) return here = -1;
  if (is_short_of_feed(date, demand)) {
    is_pulled = 1;
    year[YEAR_pulledOn] = date;
    return here = -1;
  }
  int is_above = here >= 0 && is_open(here, date) && standing(here) > RULE_stubbleLbPerAc;
  if (is_above && days_in < RULE_mostDaysIn) {
    days_in += 1;
    return here;
  }
  int best = -1, paddock = here;
  double most = -1;
  for (int step = 1; step <= PADDOCKS; step++) {
    paddock += 1;
    if (paddock >= PADDOCKS) paddock = 0;
    if (paddock == here || day - 1 - rows[paddock * ROW_width + STATE_lastGrazed] < RULE_leastRestDays) continue;
    double mass = standing(paddock);
    if (mass < RULE_stubbleLbPerAc + RULE_entryAboveLbPerAc || !is_open(paddock, date)) continue;
    if (mass > most) {
      most = mass;
      best = paddock;
    }
  }
  if (best < 0 && is_above) {
    days_in += 1;
    return here;
  }
  days_in = 1;
  if (best >= 0) year[YEAR_moves] += 1;
  return here = best;
}

int main(int count, char **arguments) {
  if (count < 2) return 1;
  const char *folder = arguments[1];
  read_side(load(folder, "numbers"));
  rows = load(folder, "rows");
  const double *demands = load(folder, "demandLb"), *daily = load(folder, "daily"), *start = load(folder, "rows");
  const double *dry = load(folder, "dry"), *dry_step = load(folder, "dryStep"), *wet = load(folder, "wet"), *wet_step = load(folder, "wetStep");
  const double *factors = load(folder, "factor"), *factor_step = load(folder, "factorStep");
  const int32_t *flags = load(folder, "flags"), *dates = load(folder, "monthDay"), *period = load(folder, "period");
  double *sums = calloc((size_t)PERIODS * PADDOCKS * SUMS_width, sizeof(double)), *years = calloc((size_t)PERIODS * YEAR_width, sizeof(double));
  const double open_base = 1 - GRASS_baseShare, below_share = 1 - GRASS_rootShareInTop, span = GRASS_fullCoefficient - GRASS_bareCoefficient;
  struct timespec before, after;
  double best = INFINITY;
  /* Several times over, and the best of them, as it is done there. */
  for (int again = 0; again < PASSES; again++) {
  memcpy(rows, start, (size_t)PADDOCKS * ROW_width * sizeof(double));
  memset(sums, 0, (size_t)PERIODS * PADDOCKS * SUMS_width * sizeof(double));
  memset(years, 0, (size_t)PERIODS * YEAR_width * sizeof(double));
  here = -1;
  clock_gettime(CLOCK_MONOTONIC, &before);
  for (int day = 0; day < DAYS; day++) {
    const double *sky = daily + (size_t)day * SKY_width;
    double *year = years + (size_t)period[day] * YEAR_width;
    double water = sky[SKY_rain] + sky[SKY_melt], water_in = water / 25.4, reference = sky[SKY_reference], demand = demands[day];
    int is_cut = (flags[day] & FLAG_cut) != 0, grazed = morning(day, flags[day], dates[day], demand, year);
    for (int p = 0; p < PADDOCKS; p++) {
      double *s = rows + p * ROW_width, *u = sums + ((size_t)period[day] * PADDOCKS + p) * SUMS_width - ROW_sums;
      const double *g = s;
      double green = s[STATE_green], dead = s[STATE_dead], litter = s[STATE_litter], depletion = s[STATE_depletion], top = s[STATE_top];
      double available = g[GROUND_available], top_available = g[GROUND_topAvailable], below_available = g[GROUND_belowAvailable];
      double evaporable = g[GROUND_evaporable], by_green = GRASS_perGreenAcPerLb * green, green_share = 1 - exp(-by_green);
      double cover = 1 - open_base * exp(-(by_green + GRASS_perDeadAcPerLb * dead + GRASS_perLitterAcPerLb * litter)), runoff = 0;
      if (water > 0) {
        double percent = 100 * cover, fair_middle = g[GROUND_fairMiddle], from, per_percent;
        if (percent < fair_middle) {
          from = percent > g[GROUND_poorMiddle] ? percent : g[GROUND_poorMiddle];
          per_percent = g[GROUND_perPoorer];
        } else {
          from = percent < g[GROUND_goodMiddle] ? percent : g[GROUND_goodMiddle];
          per_percent = g[GROUND_perBetter];
        }
        double number = g[GROUND_fair] + (from - fair_middle) * per_percent;
        int whole = (int)number, whole_percent = (int)(100 * cover);
        double part = number - whole;
        double dry_in = 1000 / (dry[whole] + dry_step[whole] * part) - 10, wet_in = 1000 / (wet[whole] + wet_step[whole] * part) - 10;
        double tabled = wet_in + top * g[GROUND_perTop] * (dry_in - wet_in);
        if (water_in > 0.05 * (1.8833 * tabled - 0.9836)) {
          double retention = 1.33 * pow(tabled, 1.15), past = water_in - 0.05 * retention;
          if (past > 0) {
            double ran = 25.4 * (past * past) / (past + retention);
            runoff = ran < water ? ran : water;
          }
        }
        double factor = factors[whole_percent] + factor_step[whole_percent] * (100 * cover - whole_percent);
        u[SUM_runoff] += runoff;
        u[SUM_soilLost] += g[GROUND_bareLoss] * sky[SKY_erosivity] * factor;
      }
      double store = GRASS_leafStoreMm * cover, held = s[STATE_held], on_leaves = held;
      double surface = s[STATE_surface], roots = depletion, wet_top = top, drip = held > store ? held - store : 0;
      if (water > 0 || drip > 0) {
        double kept = water - runoff, room = store - (held - drip), caught = kept < room ? kept : room;
        double through = kept - caught + drip;
        on_leaves = held - drip + caught;
        surface -= through;
        if (surface < 0) surface = 0;
        roots -= through;
        if (roots < 0) {
          u[SUM_drainage] -= roots;
          roots = 0;
        }
        wet_top -= through;
        if (wet_top < 0) wet_top = 0;
      }
      double dried = on_leaves < reference ? on_leaves : reference, left = reference - dried;
      double basal = GRASS_bareCoefficient + span * green_share, wanted = basal * left;
      double most = GRASS_maximumCoefficient > basal + 0.05 ? GRASS_maximumCoefficient : basal + 0.05;
      double bare = 1 - cover, exposed = bare > 0.01 ? bare : 0.01, per_exposed = 1 / exposed;
      double slowed = (evaporable - surface) * g[GROUND_perSlowing], from_ground = (slowed < 1 ? slowed : 1) * (most - basal);
      double limit = exposed * most, evaporation = (from_ground < limit ? from_ground : limit) * left;
      double surface_left = exposed * (evaporable - surface), roots_left = available - roots;
      if (surface_left < evaporation) evaporation = surface_left;
      if (roots_left < evaporation) evaporation = roots_left;
      double fitted = GRASS_depletionFraction + 0.04 * (5 - wanted), fraction = fitted < 0.1 ? 0.1 : fitted > 0.8 ? 0.8 : fitted;
      double scarce = (1 - fraction) * available, share = roots_left < scarce ? roots_left / scarce : 1, transpiration = share * wanted;
      if (roots_left - evaporation < transpiration) {
        transpiration = roots_left - evaporation;
        share = transpiration / wanted;
      }
      double below_after = roots - wet_top;
      double below = below_after < 0 ? 0 : below_after < below_available ? below_after : below_available;
      double top_left = GRASS_rootShareInTop * (top_available - wet_top) * g[GROUND_perTop];
      double below_left = below_share * (below_available - below) * g[GROUND_perBelow];
      double top_share = top_left + below_left > 0 ? top_left / (top_left + below_left) : 1;
      double all = roots + evaporation + transpiration, evening = wet_top + evaporation + top_share * transpiration;
      if (all - below_available > evening) evening = all - below_available;
      double surface_evening = surface + evaporation * per_exposed;
      s[STATE_held] = on_leaves - dried;
      s[STATE_surface] = surface_evening < evaporable ? surface_evening : evaporable;
      s[STATE_depletion] = all < available ? all : available;
      s[STATE_top] = evening < top_available ? evening : top_available;
      double growing = 1 - (green + dead) * g[GROUND_perCeiling];
      double grown = g[GROUND_rate] * (sky[SKY_response] * share) * (green + GRASS_crownLbPerAc) * growing;
      if (grown < 0) grown = 0;
      double dying = (green + grown) * (GRASS_dyingByAge + GRASS_dyingByDrought * (1 - share) + GRASS_dyingByFrost * sky[SKY_frost]);
      double fallen = dead * GRASS_fallingShare, mass;
      green += grown - dying;
      dead += dying - fallen;
      litter += fallen - litter * sky[SKY_rot];
      mass = green + dead;
      if (is_cut && mass >= RULE_cutWorthLbPerAc && g[GROUND_isMeadow] != 0) {
        double cut = mass - RULE_cutLeavesLbPerAc, cut_share = cut / mass;
        green -= cut_share * green;
        dead -= cut_share * dead;
        litter += cut * (1 - RULE_hayKeptShare);
        year[YEAR_made] += cut * RULE_hayKeptShare * g[GROUND_area];
        u[SUM_cut] += cut;
      }
      s[STATE_green] = green;
      s[STATE_dead] = dead;
      s[STATE_litter] = litter;
      u[SUM_evaporation] += evaporation;
      u[SUM_transpiration] += transpiration;
      u[SUM_dried] += dried;
      u[SUM_stressDays] += 1 - share;
      u[SUM_grown] += grown;
      u[SUM_cover] += cover;
      if (mass > u[SUM_peak]) u[SUM_peak] = mass;
    }
    double eaten_lb = 0;
    if (grazed >= 0) {
      double *s = rows + grazed * ROW_width, *u = sums + ((size_t)period[day] * PADDOCKS + grazed) * SUMS_width - ROW_sums;
      const double *g = s;
      double green = s[STATE_green], dead = s[STATE_dead], mass = green + dead;
      double within = mass > RULE_outOfReachLbPerAc ? mass - RULE_outOfReachLbPerAc : 0;
      double wanted = demand * fmin(1, mass / RULE_fullIntakeFromLbPerAc) / g[GROUND_area], reached = within / (1 + RULE_trampledPerEaten);
      double eaten = wanted < reached ? wanted : reached, trampled = eaten * RULE_trampledPerEaten, gone = eaten + trampled;
      double preferred = RULE_greenPreference * green, by_choice = preferred + dead > 0 ? gone * preferred / (preferred + dead) : 0;
      double from_both = gone - dead > by_choice ? gone - dead : by_choice, from_green = green < from_both ? green : from_both;
      double dead_after = dead - (gone - from_green);
      s[STATE_green] = green - from_green;
      s[STATE_dead] = dead_after > 0 ? dead_after : 0;
      s[STATE_litter] += trampled;
      s[STATE_lastGrazed] = day;
      eaten_lb = eaten * g[GROUND_area];
      u[SUM_eaten] += eaten;
      u[SUM_trampled] += trampled;
      u[SUM_grazedDays] += 1;
      if (s[STATE_green] + s[STATE_dead] < RULE_stubbleLbPerAc) u[SUM_stubbleBroken] += 1;
      year[YEAR_eaten] += eaten_lb;
      year[YEAR_grazedDays] += eaten_lb / demand;
    }
    double fed = demand > eaten_lb ? demand - eaten_lb : 0, from_barn = fed / (1 - RULE_feedingLossShare);
    year[YEAR_demand] += demand;
    year[YEAR_fed] += fed;
    year[YEAR_fromBarn] += from_barn;
    if (flags[day] & FLAG_inSeason) year[YEAR_fromBarnInSeason] += from_barn;
    year[YEAR_days] += 1;
  }
  clock_gettime(CLOCK_MONOTONIC, &after);
  double took = (after.tv_sec - before.tv_sec) + (after.tv_nsec - before.tv_nsec) / 1e9;
  if (took < best) best = took;
  }
  double total[SUMS_width] = {0};
  for (size_t at = 0; at < (size_t)PERIODS * PADDOCKS * SUMS_width; at++) total[at % SUMS_width] += sums[at];
  printf("%.9f %.17g %.17g %.17g\n", best, total[SUM_runoff - ROW_sums], total[SUM_grown - ROW_sums], total[SUM_eaten - ROW_sums]);
  return 0;
}
