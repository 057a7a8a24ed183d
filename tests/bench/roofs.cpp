// Speed of roof_solve beside CGAL's straight skeleton (exact predicates, inexact constructions) on the same plans, one slope: the
// whole call, answer and all, against the skeleton alone. Then plans of more and more corners, and a house framed and proved.
// With --check only the answers are compared, as far as a skeleton tells them: the length of all its inner edges in plan.
#include <CGAL/Exact_predicates_inexact_constructions_kernel.h>
#include <CGAL/create_straight_skeleton_2.h>
#include <frame/frame.h>

#include <cmath>
#include <cstdio>
#include <cstring>
#include <ctime>
#include <fstream>
#include <sstream>
#include <string>
#include <vector>

typedef CGAL::Exact_predicates_inexact_constructions_kernel Kernel;
typedef CGAL::Polygon_2<Kernel> Polygon;

struct Plan {
    std::string name;
    std::vector<double> xy;
};

static double now() {
    struct timespec time;
    clock_gettime(CLOCK_PROCESS_CPUTIME_ID, &time);
    return time.tv_sec + 1e-9 * time.tv_nsec;
}

// The shortest of several rounds, each long enough to be measured.
template <typename Work> static double measure(Work work) {
    double best = HUGE_VAL;
    for (int round = 0; round < 5; round++) {
        const double begun = now();
        int count = 0;
        do {
            work();
            count++;
        } while (now() - begun < 0.02);
        best = std::fmin(best, (now() - begun) / count);
    }
    return best;
}

static void fill(const Plan &plan, std::vector<frame_roof_corner> &corners, frame_roof_solve_in &in) {
    static const double slope = 1;
    corners.resize(plan.xy.size() / 2);
    for (size_t i = 0; i < corners.size(); i++) {
        frame_roof_corner_init(&corners[i]);
        corners[i].x_in = plan.xy[2 * i], corners[i].y_in = plan.xy[2 * i + 1];
    }
    frame_roof_solve_in_init(&in);
    in.corners = corners.data(), in.corner_count = corners.size();
    in.slopes = &slope, in.slope_count = 1;
}

// The length in plan of all ridges, hips, valleys and seams.
static double our_length(const frame_roof_solve_in &in) {
    frame_roof_solve *roof;
    double sum = 0;
    if (frame_roof_solve_solve(&in, &roof, NULL)) return -1;
    for (size_t i = 0; i < frame_roof_solve_line_count(roof); i++) {
        frame_roof_solve_line line;
        frame_roof_solve_line_at(roof, i, &line);
        if (line.kind != FRAME_LINE_EAVE) sum += line.run_in;
    }
    frame_roof_solve_free(roof);
    return sum;
}

static Polygon polygon_of(const Plan &plan) {
    Polygon polygon;
    for (size_t i = 0; i < plan.xy.size(); i += 2) polygon.push_back(Kernel::Point_2(plan.xy[i], plan.xy[i + 1]));
    if (polygon.is_clockwise_oriented()) polygon.reverse_orientation();
    return polygon;
}

static double skeleton_length(const Polygon &polygon) {
    double sum = 0;
    auto skeleton = CGAL::create_interior_straight_skeleton_2(polygon);
    if (!skeleton) return -1;
    for (auto edge = skeleton->halfedges_begin(); edge != skeleton->halfedges_end(); ++edge)
        if (edge->is_bisector())
            sum += std::sqrt(CGAL::squared_distance(edge->vertex()->point(), edge->opposite()->vertex()->point())) / 2;
    return sum;
}

static std::vector<Plan> read(const char *path) {
    std::vector<Plan> plans;
    std::ifstream file(path);
    for (std::string line; std::getline(file, line);) {
        if (line.empty() || line[0] == '#') continue;
        const size_t begin = line.find('"', 1) + 2, end = line.find(',', begin);
        if (line[0] != '"' || end == std::string::npos) continue;
        Plan plan{line.substr(1, begin - 3), {}};
        std::string numbers = line.substr(begin, end - begin);
        for (char &c : numbers)
            if (!strchr("0123456789.-+eE", c)) c = ' ';
        std::istringstream words(numbers);
        for (double x; words >> x;) plan.xy.push_back(x);
        plans.push_back(plan);
    }
    return plans;
}

// A star of so many corners: every second one is an inner corner.
static Plan star(int corners) {
    Plan plan{"", {}};
    unsigned state = 1;
    for (int i = 0; i < corners; i++) {
        state = state * 1664525u + 1013904223u;
        const double radius = (i & 1 ? 700 : 1000) + (state >> 16) % 200, angle = 2 * std::acos(-1.0) * i / corners;
        plan.xy.push_back(radius * std::cos(angle)), plan.xy.push_back(radius * std::sin(angle));
    }
    return plan;
}

static int compare(const std::vector<Plan> &plans) {
    int wrong = 0;
    for (const Plan &plan : plans) {
        std::vector<frame_roof_corner> corners;
        frame_roof_solve_in in;
        fill(plan, corners, in);
        const double ours = our_length(in), theirs = skeleton_length(polygon_of(plan));
        if (std::fabs(ours - theirs) > 1e-7 * theirs) wrong++, std::printf("plan %s: %.9f, skeleton %.9f\n", plan.name.c_str(), ours, theirs);
    }
    std::printf("%zu plans: inner lines equal those of the skeleton but for %d\n", plans.size(), wrong);
    return wrong;
}

static double ours(const Plan &plan) {
    std::vector<frame_roof_corner> corners;
    frame_roof_solve_in in;
    fill(plan, corners, in);
    return measure([&] {
        frame_roof_solve *roof;
        if (!frame_roof_solve_solve(&in, &roof, NULL)) frame_roof_solve_free(roof);
    });
}

static void race(const std::vector<Plan> &plans) {
    double sum = 0, worst = 0;
    for (const Plan &plan : plans) {
        const Polygon polygon = polygon_of(plan);
        const double ratio = ours(plan) / measure([&] { CGAL::create_interior_straight_skeleton_2(polygon); });
        sum += std::log(ratio), worst = std::fmax(worst, ratio);
    }
    std::printf("roof_solve over the skeleton alone, %zu plans: %.3f of its time (geometric mean), %.3f at worst\n", plans.size(),
                std::exp(sum / plans.size()), worst);
}

static void grow() {
    double before = 0;
    for (int corners = 250; corners <= 2000; corners *= 2) {
        const double time = ours(star(corners)), steps = corners * std::log2((double)corners);
        std::printf("a star of %4d corners: %8.3f ms, %.1f ns for each n log n%s\n", corners, 1e3 * time, 1e9 * time / steps,
                    before > 0 ? "" : " (the figure to keep)");
        before = time;
    }
}

// A house of 40 corners: wings along a body.
static void frame_house() {
    std::vector<frame_roof_corner> corners;
    frame_roof_members_in in;
    frame_roof_members_out out = {};
    Plan plan{"house", {0, 0}};
    double slope = 8 / 12.0, x = 0;
    for (int wing = 0; wing < 9; wing++, x += 144) {
        const double deep = 60 + 24 * (wing % 3);
        for (const double at : {x + 36, 0.0, x + 36, -deep, x + 108, -deep, x + 108, 0.0}) plan.xy.push_back(at);
    }
    for (const double at : {x + 36, 0.0, x + 36, 264.0, 0.0, 264.0}) plan.xy.push_back(at);
    frame_roof_solve_in solve;
    fill(plan, corners, solve);
    frame_roof_members_in_init(&in);
    in.corners = corners.data(), in.corner_count = corners.size();
    in.slopes = &slope, in.slope_count = 1;
    in.rafter_size = FRAME_SIZE(2, 8), in.overhang_in = 12;
    size_t pieces = 0;
    const double time = measure([&] {
        frame_roof_members *members;
        if (frame_roof_members_solve(&in, &members, NULL)) return;
        frame_roof_members_result(members, &out);
        pieces = frame_roof_members_piece_count(members);
        frame_roof_members_free(members);
    });
    std::printf("a house of %zu corners framed, cut and proved: %.2f ms, %zu pieces, %d pairs tried, fits: %s\n", corners.size(),
                1e3 * time, pieces, (int)out.pairs, out.fits == 1 ? "yes" : "no");
}

int main(int count, char **arguments) {
    const bool check = count > 1 && !strcmp(arguments[1], "--check");
    const std::vector<Plan> plans = read(ROOF_PLANS);
    if (plans.empty()) return std::puts("no plans"), 1;
    const int wrong = compare(plans);
    if (check) return wrong != 0;
    race(plans);
    grow();
    frame_house();
    return wrong != 0;
}
