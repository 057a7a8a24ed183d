/* Cutting jobs and bin-packing instances published by others, against their best known results. The sets are not part
 * of the project: the program reads them from a directory given (its first argument, or FRAME_CUTTING_SETS), and says
 * "not run" without one. The second argument is the time each bin packing may take, in seconds (2); 0: no limit, but
 * the steps after which a search ends by itself, so that the outcome is the same on a busy machine. Files: jobs.csv
 * (job,kerf,stocks,pieces: sixteenths of an inch and cents), jobs_exact.csv (best costs), bpp_instances.csv (capacity
 * and items) and bpp_reference.csv (best known bins). Every plan is verified here, by lengths, kerfs and counts. */
#include <math.h>
#include <stdio.h>
#include <stdlib.h>
#include <string.h>
#include <time.h>

#include <frame/frame.h>

enum { MOST = 2000, LINE = 1 << 16, COLUMNS = 32, NOT_RUN = 77 };

typedef struct set_job {
    frame_stock_piece pieces[MOST];
    frame_stock_length stock[MOST];
    frame_stock_plan_in in;
} set_job;

typedef struct tally {
    int run, equal, proven, one_above, more_above, below, wrong, late;
    double slowest_s;
} tally;

static double now_s(void) {
    struct timespec time;
    clock_gettime(CLOCK_MONOTONIC, &time);
    return (double)time.tv_sec + 1e-9 * (double)time.tv_nsec;
}

/* Cells of a line of CSV, quotes taken off; gives how many. */
static int split(char *line, char **cells) {
    int count = 0;
    line[strcspn(line, "\r\n")] = 0;
    for (char *at = line; at && count < COLUMNS;) {
        char *end = *at == '"' ? strchr(at + 1, '"') : strchr(at, ',');
        cells[count++] = *at == '"' ? at + 1 : at;
        if (*at == '"' && end) *end++ = 0;
        at = end && *end == ',' ? end + 1 : NULL;
        if (end) *end = 0;
    }
    return count;
}

static FILE *open_in(const char *directory, const char *name) {
    char path[4096];
    snprintf(path, sizeof path, "%s/%s", directory, name);
    return fopen(path, "r");
}

/* The cell of a column in the line whose first cells are as given. */
static int look_up(const char *directory, const char *name, const char *column, char *const *keys, int key_count,
                   double *value) {
    static char line[LINE];
    char *cells[COLUMNS];
    int at = -1, found = 0;
    FILE *file = open_in(directory, name);
    if (!file) return 0;
    while (!found && fgets(line, sizeof line, file)) {
        const int count = split(line, cells);
        if (at < 0) {
            for (int c = 0; c < count; c++)
                if (!strcmp(cells[c], column)) at = c;
            if (at < 0) break;
        } else if (at < count) {
            int same = 1;
            for (int k = 0; k < key_count; k++) same = same && !strcmp(cells[k], keys[k]);
            if (same) *value = strtod(cells[at], NULL), found = 1;
        }
    }
    fclose(file);
    return found;
}

static void begin(set_job *job, double kerf, double limit_s) {
    memset(job, 0, sizeof *job);
    frame_stock_plan_in_init(&job->in);
    job->in.pieces = job->pieces;
    job->in.stock = job->stock;
    job->in.kerf_in = kerf;
    job->in.time_limit_s = limit_s;
}

static void want(set_job *job, double length, int32_t count) {
    frame_stock_piece *piece = &job->pieces[job->in.piece_count++];
    frame_stock_piece_init(piece);
    piece->length_in = length;
    piece->count = count;
}

static void have(set_job *job, double length, double price) {
    frame_stock_length *stock = &job->stock[job->in.stock_count++];
    frame_stock_length_init(stock);
    stock->length_in = length;
    stock->price = price;
}

static void read_pairs(set_job *job, char *text, double scale, int stock) {
    for (char *pair = strtok(text, " "); pair; pair = strtok(NULL, " ")) {
        char *rest;
        const double length = strtod(pair, &rest) * scale, other = *rest == ':' ? strtod(rest + 1, NULL) : 1;
        if (stock)
            have(job, length, other / 100);
        else
            want(job, length, (int32_t)other);
    }
}

/* What is wrong with a plan; NULL when nothing is. */
static const char *verify(const set_job *job, const frame_stock_plan *plan, double *cost) {
    static int32_t cut[MOST];
    frame_stock_plan_board board;
    frame_stock_plan_piece piece;
    memset(cut, 0, sizeof cut);
    *cost = 0;
    for (size_t b = 0; b < frame_stock_plan_board_count(plan); b++) {
        if (frame_stock_plan_board_at(plan, b, &board)) return "a board cannot be read";
        double used = 0;
        for (uint32_t p = 0; p < board.piece_count; p++) {
            if (frame_stock_plan_piece_at(plan, board.piece_first + p, &piece)) return "a piece cannot be read";
            used += job->pieces[piece.piece].length_in + (p ? job->in.kerf_in : 0);
            cut[piece.piece]++;
        }
        if (used > job->stock[board.stock].length_in + 1e-6) return "a board is too short";
        *cost += job->stock[board.stock].price;
    }
    for (size_t i = 0; i < job->in.piece_count; i++)
        if (cut[i] != job->pieces[i].count) return "pieces are missing or too many";
    return NULL;
}

static void run(const char *name, const set_job *job, double best, tally *sum) {
    frame_stock_plan *plan = NULL;
    frame_stock_plan_out out;
    double cost;
    const double begun = now_s();
    const frame_status status = frame_stock_plan_solve(&job->in, &plan, NULL);
    const double took = now_s() - begun;
    sum->run++;
    if (status || frame_stock_plan_result(plan, &out)) {
        printf("  %s: %s\n", name, frame_error_text());
        sum->wrong++;
        return;
    }
    const char *wrong = verify(job, plan, &cost);
    if (!wrong && fabs(cost - out.cost) > 1e-6) wrong = "its cost is not the sum of its boards";
    if (!wrong && out.bound > best + 1e-6) wrong = "its bound is above the best known";
    if (!wrong && out.optimal && cost > best + 1e-6) wrong = "it is said to be optimal and is not";
    if (wrong) printf("  %s: %s\n", name, wrong), sum->wrong++;
    const double step = best >= 1 && job->in.stock_count == 1 ? 1 : 0.01;
    sum->equal += fabs(cost - best) < 1e-6;
    sum->below += cost < best - 1e-6;
    sum->one_above += cost > best + 1e-6 && cost < best + step + 1e-6;
    sum->more_above += cost > best + step + 1e-6;
    sum->proven += out.optimal;
    sum->late += job->in.time_limit_s != FRAME_NOT_GIVEN && took > job->in.time_limit_s * 1.1 + 0.05;
    if (took > sum->slowest_s) sum->slowest_s = took;
    if (getenv("FRAME_EACH") || !out.optimal || cost > best + 1e-6)
        printf("  %-24s cost %.2f bound %.2f best known %.2f %s %.3f s\n", name, cost, out.bound, best,
               out.optimal ? "proven" : "not proven", took);
    frame_stock_plan_free(plan);
}

static void report(const char *what, const tally *sum) {
    printf(
        "%s: %d run, %d equal, %d below, %d one above, %d more above, %d proven, %d wrong, %d late, slowest %.2f s\n",
        what, sum->run, sum->equal, sum->below, sum->one_above, sum->more_above, sum->proven, sum->wrong, sum->late,
        sum->slowest_s);
}

static int run_jobs(const char *directory, set_job *job) {
    static char line[LINE];
    char *cells[COLUMNS];
    const char *only = getenv("FRAME_ONLY");
    tally sum = {0};
    FILE *file = open_in(directory, "jobs.csv");
    if (!file) return printf("carpentry jobs: not run (no jobs.csv)\n"), 1;
    if (!fgets(line, sizeof line, file)) line[0] = 0;
    while (fgets(line, sizeof line, file)) {
        double best;
        if (split(line, cells) < 4 || (only && strcmp(only, cells[0])) ||
            !look_up(directory, "jobs_exact.csv", "best_cents", cells, 1, &best))
            continue;
        begin(job, strtod(cells[1], NULL) / 16, 5);
        read_pairs(job, cells[2], 1.0 / 16, 1);
        read_pairs(job, cells[3], 1.0 / 16, 0);
        run(cells[0], job, best / 100, &sum);
    }
    fclose(file);
    report("carpentry jobs, 5 s each", &sum);
    return sum.run > 0 && sum.equal + sum.below == sum.run && sum.proven >= 0.9 * sum.run && !sum.wrong;
}

static int run_packings(const char *directory, set_job *job, double limit_s) {
    static char line[LINE];
    char *cells[COLUMNS], name[256];
    const char *only = getenv("FRAME_ONLY");
    tally sum = {0};
    FILE *file = open_in(directory, "bpp_instances.csv");
    if (!file) return printf("bin packing: not run (no bpp_instances.csv)\n"), 1;
    if (!fgets(line, sizeof line, file)) line[0] = 0;
    while (fgets(line, sizeof line, file)) {
        double best, scale = 1;
        if (split(line, cells) < 5) continue;
        char *keys[] = {cells[0], cells[1], cells[3]}; /* set, name, number of items */
        if (!look_up(directory, "bpp_reference.csv", "best_known", keys, 3, &best)) continue;
        if (only && strcmp(only, cells[1])) continue;
        const double capacity = strtod(cells[2], NULL);
        while (capacity * scale > 1200) scale /= 2;
        begin(job, 0, limit_s);
        have(job, capacity * scale, 1);
        snprintf(name, sizeof name, "%s", cells[1]);
        read_pairs(job, cells[4], scale, 0);
        run(name, job, best, &sum);
    }
    fclose(file);
    report(limit_s == FRAME_NOT_GIVEN ? "bin packing, no time limit" : "bin packing, by the clock", &sum);
    return sum.run > 0 && sum.equal + sum.below >= 0.97 * sum.run && !sum.more_above && !sum.wrong;
}

int main(int count, char **arguments) {
    const double limit_s = count > 2 ? strtod(arguments[2], NULL) : 2;
    const char *directory = count > 1 ? arguments[1] : getenv("FRAME_CUTTING_SETS");
    if (!directory || !*directory) {
        printf("not run: give the directory of the sets\n");
        return NOT_RUN;
    }
    set_job *job = malloc(sizeof *job);
    if (!job) return 1;
    setvbuf(stdout, NULL, _IOLBF, 0);
    const int jobs = run_jobs(directory, job),
              packings = run_packings(directory, job, limit_s > 0 ? limit_s : FRAME_NOT_GIVEN);
    free(job);
    return jobs && packings ? 0 : 1;
}
