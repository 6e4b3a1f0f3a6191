/*
 * The steady law of one skimmer in plain C: head over the weir, gas holdup, level, gas held in the foam, share that lives to
 * the lip, drainage at the lip. Same equations, starts, stops and numbers of steps as SteadyLaw and the formulas that it
 * calls, so that only the language differs. Free weirs only.
 *
 * usage: steady INPUTS OUTPUTS SECONDS
 * INPUTS and OUTPUTS are files of doubles of this machine; see SteadyPoints. Prints nanoseconds a point: of the quickest pass over
 * all points, and on average.
 */
#define _POSIX_C_SOURCE 199309L
#include <math.h>
#include <stdio.h>
#include <stdlib.h>
#include <time.h>

#ifndef M_PI
#define M_PI 3.14159265358979323846
#endif
#define GRAVITY 9.80665
#define HEAD_CORRECTION_M 0.001
#define LAW_DOUBLES 13
#define POINT_DOUBLES 11
#define OUTPUT_DOUBLES 13

typedef struct {
    double columns, weir_width, channel_width, opening, funnel_base, cone_top, lip, bore_radius, neck_radius;
    double feed_share, holdup_exponent, drainage_exponent, foam_liquid;
    double radius_per_m, cone_volume, neck_volume, bore_area, neck_area;
    double flood_fraction, flood_gas, flood_power;
    double weir_alpha, weir_beta, weir_coefficient;
} law;

typedef struct {
    double crest, flow, beyond, air, terminal, life, shape, drainage, back_pressure, weight;
} inputs;

typedef struct {
    double head, clear, holdup, level, foam_weight, foam_gas, share, lip_flux, lip_fraction, lip_liquid, skimmate;
    double column_flooded, lip_flooded;
} point;

static double linear(const double *x, const double *y, int count, double at) {
    int last = count - 1;
    if (at >= x[last]) {
        return y[last];
    }
    int i = 1;
    while (at > x[i]) {
        i++;
    }
    return y[i - 1] + (y[i] - y[i - 1]) * (at - x[i - 1]) / (x[i] - x[i - 1]);
}

static double frustum(const law *l, double height, double lower) {
    return M_PI / 3 * height * (lower * lower + lower * l->neck_radius + l->neck_radius * l->neck_radius);
}

static void prepare(law *l, const double *d) {
    static const double ratio[] = {0, 0.2, 0.4, 0.5, 0.6, 0.7, 0.8, 0.9, 1};
    static const double alpha[] = {0.587, 0.589, 0.591, 0.592, 0.593, 0.594, 0.596, 0.598, 0.602};
    static const double beta[] = {-0.0023, -0.0018, 0.0058, 0.011, 0.018, 0.030, 0.045, 0.064, 0.075};
    static const double width_ratio[] = {0, 0.2, 0.4, 0.6, 0.8, 1};
    static const double width_correction[] = {0.0024, 0.0024, 0.0027, 0.0036, 0.0042, -0.0009};
    l->columns = d[0];
    l->weir_width = d[1];
    l->channel_width = d[2];
    l->opening = d[3];
    l->funnel_base = d[4];
    l->cone_top = d[5];
    l->lip = d[6];
    l->bore_radius = d[7];
    l->neck_radius = d[8];
    l->feed_share = d[9];
    l->holdup_exponent = d[10];
    l->drainage_exponent = d[11];
    l->foam_liquid = d[12];
    l->radius_per_m = (l->neck_radius - l->bore_radius) / (l->cone_top - l->funnel_base);
    l->cone_volume = frustum(l, l->cone_top - l->funnel_base, l->bore_radius);
    l->neck_volume = M_PI * l->neck_radius * l->neck_radius * (l->lip - l->cone_top);
    l->bore_area = M_PI * l->bore_radius * l->bore_radius;
    l->neck_area = M_PI * l->neck_radius * l->neck_radius;
    double n = l->drainage_exponent;
    l->flood_fraction = (n - 1) / (n + 1);
    l->flood_gas = n * pow(l->flood_fraction, n - 1) * (1 - l->flood_fraction) * (1 - l->flood_fraction);
    l->flood_power = pow(l->flood_fraction, n);
    double share = l->weir_width / l->channel_width;
    l->weir_alpha = linear(ratio, alpha, 9, share);
    l->weir_beta = linear(ratio, beta, 9, share);
    l->weir_coefficient =
        2.0 / 3 * sqrt(2 * GRAVITY) * (l->weir_width + linear(width_ratio, width_correction, 6, share));
}

static double head(const law *l, double crest, double discharge) {
    double target = discharge / l->weir_coefficient;
    double slope = l->weir_beta / crest;
    double cubic = l->weir_alpha - slope * HEAD_CORRECTION_M;
    double x = cbrt(target / cubic);
    for (int step = 0; step < 30; step++) {
        double square = x * x;
        double excess = square * x * (cubic + slope * square) - target;
        double gain = square * (3 * cubic + 5 * slope * square);
        double move = gain > 0 ? excess / gain : 0;
        x -= move;
        if (fabs(move) <= 1e-7 * x) {
            break;
        }
    }
    return fmax(0, x * x - HEAD_CORRECTION_M);
}

static double power(double e, double n) {
    return n == 2 ? 1 - e : pow(1 - e, n - 1);
}

static double descend(double gas, double liquid, double speed, double n) {
    double e = 1;
    for (int step = 0; step < 80; step++) {
        double p = power(e, n);
        double excess = speed * e * (1 - e) * p - gas * (1 - e) + liquid * e;
        double move = excess / (speed * p * (1 - (n + 1) * e) + gas + liquid);
        e -= move;
        if (fabs(move) <= 1e-11 * e) {
            break;
        }
    }
    return e;
}

static double holdup(double gas, double liquid, double speed, double n) {
    if (gas == 0) {
        return 0;
    }
    if (liquid == 0 && n == 2) {
        double rest = 1 - 4 * gas / speed;
        return rest < 0 ? NAN : 2 * gas / speed / (1 + sqrt(rest));
    }
    double bend = 2 / (n + 1);
    double e = 0;
    for (int step = 0; step < 80; step++) {
        double p = power(e, n);
        double excess = speed * e * (1 - e) * p - gas * (1 - e) + liquid * e;
        double slope = speed * p * (1 - (n + 1) * e) + gas + liquid;
        double move = excess / slope;
        if (!(slope > 0)) {
            e = 1;
            break;
        }
        e -= move;
        double curvature = 0.5 * speed * n * p * (2 - (n + 1) * e) / (1 - e);
        if (e > bend || curvature * move * move <= 1e-12 * e * slope) {
            break;
        }
    }
    if (e <= bend) {
        return e;
    }
    return liquid > 0 ? descend(gas, liquid, speed, n) : NAN;
}

static double volume_above(const law *l, double level) {
    if (level >= l->lip) {
        return 0;
    }
    if (level >= l->cone_top) {
        return M_PI * l->neck_radius * l->neck_radius * (l->lip - level);
    }
    if (level >= l->funnel_base) {
        double radius = l->bore_radius + l->radius_per_m * (level - l->funnel_base);
        return l->neck_volume + frustum(l, l->cone_top - level, radius);
    }
    return l->neck_volume + l->cone_volume + M_PI * l->bore_radius * l->bore_radius * (l->funnel_base - level);
}

static double channel_root(double c) {
    if (c >= 4.0 / 27) {
        return 1.0 / 3;
    }
    double eps = c * (1 + c * (2 + c * (7 + c * (30 + c * 143))));
    for (int step = 0; step < 40; step++) {
        double gas = 1 - eps;
        double slope = gas * (1 - 3 * eps);
        if (!(slope > 0)) {
            return 1.0 / 3;
        }
        double move = (c - eps * gas * gas) / slope;
        eps += move;
        if ((2 - 3 * eps) * move * move <= 1e-12 * eps * slope) {
            break;
        }
    }
    return fmin(eps, 1.0 / 3);
}

static double general_root(double c, double n) {
    double q = 2 / (n - 1);
    double limit = 1 / (1 + q);
    double d = pow(c, 0.5 * q);
    double eps = fmin(d * (1 + q * d), limit);
    for (int step = 0; step < 40; step++) {
        double gas = 1 - eps;
        double p = pow(gas, q);
        double slope = p * (1 - (1 + q) * eps) / gas;
        double missing = d - eps * p;
        if (!(slope > 0)) {
            return limit;
        }
        double move = missing / slope;
        eps += move;
        if (eps >= limit) {
            return limit;
        }
        double bend = 0.5 * q * (2 - (1 + q) * eps) * p;
        if (bend * move * move <= 1e-12 * eps * slope * gas * gas) {
            break;
        }
    }
    return eps;
}

static point at(const law *l, const inputs *in) {
    point p;
    p.head = in->flow <= 0 ? fmax(0, in->beyond - in->crest) : head(l, in->crest, in->flow);
    p.clear = in->crest + p.head;
    double air = in->air / l->columns;
    double gas_flux = air / l->bore_area;
    double liquid_flux = -l->feed_share * in->flow / (l->columns * l->bore_area);
    p.holdup = holdup(gas_flux, liquid_flux, in->terminal, l->holdup_exponent);
    p.column_flooded = isnan(p.holdup);
    if (p.column_flooded) {
        p.holdup = 1 / l->holdup_exponent;
    }
    double push = p.clear - l->opening - in->back_pressure;
    double per_metre = in->weight * l->foam_liquid;
    p.level = l->opening + (push - per_metre * (l->lip - l->opening)) / (1 - p.holdup - per_metre);
    p.foam_gas = (1 - l->foam_liquid) * volume_above(l, p.level);
    double left = 1 - p.foam_gas / (air * in->life);
    p.share = left > 0 ? pow(left, in->shape / (in->shape - 1)) : 0;
    p.lip_flux = p.share * air / l->neck_area;
    p.lip_flooded = p.level >= l->lip || p.lip_flux >= l->flood_gas * in->drainage;
    p.lip_fraction = 0;
    p.lip_liquid = 0;
    double n = l->drainage_exponent;
    if (p.lip_flooded) {
        p.lip_fraction = l->flood_fraction;
        p.lip_liquid = fmax(
            0, p.lip_flux * l->flood_fraction / (1 - l->flood_fraction) - in->drainage * l->flood_power);
    } else if (p.lip_flux > 0) {
        double scaled = p.lip_flux / (n * in->drainage);
        p.lip_fraction = n == 2 ? channel_root(scaled) : general_root(scaled, n);
        double dry = 1 - p.lip_fraction;
        p.lip_liquid = p.lip_flux * p.lip_fraction / dry * (1 - 1 / (n * dry));
    }
    p.foam_weight = in->weight * l->foam_liquid * fmax(0, l->lip - p.level);
    p.skimmate = l->columns * l->neck_area * p.lip_liquid;
    return p;
}

static double now(void) {
    struct timespec t;
    clock_gettime(CLOCK_MONOTONIC, &t);
    return t.tv_sec + 1e-9 * t.tv_nsec;
}

static double *read_doubles(const char *path, long *count) {
    FILE *file = fopen(path, "rb");
    if (file == NULL) {
        fprintf(stderr, "cannot read %s\n", path);
        exit(2);
    }
    fseek(file, 0, SEEK_END);
    *count = ftell(file) / (long)sizeof(double);
    rewind(file);
    double *numbers = malloc(*count * sizeof(double));
    if (fread(numbers, sizeof(double), *count, file) != (size_t)*count) {
        fprintf(stderr, "cannot read all of %s\n", path);
        exit(2);
    }
    fclose(file);
    return numbers;
}

int main(int argc, char **argv) {
    if (argc != 4) {
        fprintf(stderr, "usage: steady INPUTS OUTPUTS SECONDS\n");
        return 2;
    }
    long count;
    double *numbers = read_doubles(argv[1], &count);
    int laws = (int)numbers[0];
    int points = (int)numbers[1];
    law *law_table = malloc(laws * sizeof(law));
    for (int i = 0; i < laws; i++) {
        prepare(&law_table[i], numbers + 2 + i * LAW_DOUBLES);
    }
    const law **law_of = malloc(points * sizeof(law *));
    inputs *in = malloc(points * sizeof(inputs));
    double *row = numbers + 2 + laws * LAW_DOUBLES;
    for (int i = 0; i < points; i++, row += POINT_DOUBLES) {
        law_of[i] = &law_table[(int)row[0]];
        inputs one = {row[1], row[2], row[3], row[4], row[5], row[6], row[7], row[8], row[9], row[10]};
        in[i] = one;
    }
    FILE *out = fopen(argv[2], "wb");
    for (int i = 0; i < points; i++) {
        point p = at(law_of[i], &in[i]);
        fwrite(&p, sizeof(double), OUTPUT_DOUBLES, out);
    }
    fclose(out);
    double seconds = atof(argv[3]);
    volatile double sink = 0;
    double best = INFINITY;
    double all = 0;
    long passes = 0;
    for (double end = now() + seconds; now() < end; passes++) {
        double start = now();
        double sum = 0;
        for (int i = 0; i < points; i++) {
            sum += at(law_of[i], &in[i]).skimmate;
        }
        sink += sum;
        double taken = now() - start;
        all += taken;
        best = fmin(best, taken);
    }
    printf("%.3f %.3f\n", 1e9 * best / points, 1e9 * all / passes / points);
    return sink == 12345 ? 1 : 0;
}
