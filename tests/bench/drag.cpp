// How long a frame takes while a hand drags a hole: on every shipped detail the first hole goes 2 in along the rail and
// back in steps of 1/64 in, and each step is what the window does for it: the changed detail, the quick answer, and the
// three drawings with the rose painted at 1200 x 800. One after the other, though the window solves beside painting.
// Processor time, which a busy machine does not stretch.
#include "catalog/catalog.h"
#include "drawing/render/painter.h"
#include "session/session.h"
#include "solving/solve_service.h"
#include "support/shipped.h"

#include <cairo.h>
#include <fmt/format.h>

#include <algorithm>
#include <cstdio>
#include <ctime>
#include <filesystem>
#include <memory>
#include <string>
#include <vector>

namespace {

using namespace toehold;

constexpr double path_in = 2.0, step_in = 1.0 / 64.0;
constexpr double frame_limit_ms = 1000.0 / 30.0;

double ms_since(std::clock_t start) { return 1000.0 * static_cast<double>(std::clock() - start) / CLOCKS_PER_SEC; }

class Times {
  public:
    void add(double ms) { all_.push_back(ms); }
    /// Of the times in order, the one that this part of them does not exceed.
    [[nodiscard]] double quantile(double part) const {
        std::vector<double> sorted = all_;
        std::sort(sorted.begin(), sorted.end());
        const auto place = static_cast<std::size_t>(part * static_cast<double>(sorted.size() - 1) + 0.5);
        return sorted.at(place);
    }
    [[nodiscard]] std::size_t count() const { return all_.size(); }
    [[nodiscard]] std::size_t over(double limit_ms) const {
        return static_cast<std::size_t>(
            std::count_if(all_.begin(), all_.end(), [limit_ms](double ms) { return ms > limit_ms; }));
    }

  private:
    std::vector<double> all_;
};

struct DragTimes {
    Times frame, solve, paint;
    std::size_t unanswered = 0;  ///< frames without a quick answer
};

/// A picture of the window's inside: four panes.
class Sheet {
  public:
    Sheet() : surface_(cairo_image_surface_create(CAIRO_FORMAT_RGB24, width, height)), cairo_(cairo_create(surface_)) {}
    ~Sheet() {
        cairo_destroy(cairo_);
        cairo_surface_destroy(surface_);
    }
    Sheet(const Sheet&) = delete;
    Sheet& operator=(const Sheet&) = delete;

    void paint(const session::Session& session, const drawing::SectionPlane& plane) {
        const drawing::Overlay overlay = session.overlay();
        const drawing::Subject subject{session.detail(), session.resolved(), &overlay, session.display().system};
        drawing::paint_ground(cairo_, {0, 0, width, height}, drawing::Ground::paper);
        paint(drawing::plan(subject, {}), {0, 0, 700, 500});
        paint(drawing::section(subject, plane), {0, 500, 700, 300});
        paint(drawing::elevation(subject), {700, 0, 500, 500});
        paint(drawing::polar_envelope(session.polar_curves(), overlay, ""), {700, 500, 500, 300});
        cairo_surface_flush(surface_);
    }

  private:
    static constexpr int width = 1200, height = 800;

    void paint(const drawing::Scene& scene, const drawing::Area& area) {
        constexpr double units_per_mm = 96.0 / 25.4;
        drawing::paint(cairo_, scene, drawing::fit(scene, area, units_per_mm), drawing::Ground::paper);
    }

    cairo_surface_t* surface_;
    cairo_t* cairo_;
};

/// Out and back again along x.
std::vector<double> path() {
    std::vector<double> offsets;
    const int steps = static_cast<int>(path_in / step_in);
    for (int i = 1; i <= steps; ++i) offsets.push_back(i * step_in);
    for (int i = steps - 1; i >= 0; --i) offsets.push_back(i * step_in);
    return offsets;
}

DragTimes drag_first_hole(const model::BaseDetail& start, const catalog::Catalog& catalog) {
    solving::Request asked_for;
    session::Session session(catalog, start,
                             [&asked_for](solving::Request request) { asked_for = std::move(request); });
    Sheet sheet;
    DragTimes times;
    const model::Hole& hole = on_deck(start).plate.holes.front();
    const drawing::SectionPlane plane = drawing::section_plane(start, "anchor " + hole.id);
    // Inward over the plate, so that the hole stays on it.
    const double sense = hole.center.x_in > 0.0 ? -1.0 : 1.0;
    for (const double offset : path()) {
        const std::clock_t start_of_frame = std::clock();
        model::BaseDetail moved = session.detail();
        on_deck(moved).plate.holes.front().center.x_in = hole.center.x_in + sense * offset;
        session.change("Move hole " + hole.id, std::move(moved), "drag", true);
        const std::clock_t start_of_solve = std::clock();
        session.receive(solving::solve_quick(asked_for, catalog));
        times.solve.add(ms_since(start_of_solve));
        const std::clock_t start_of_paint = std::clock();
        sheet.paint(session, plane);
        times.paint.add(ms_since(start_of_paint));
        times.frame.add(ms_since(start_of_frame));
        if (session.freshness() != session::Freshness::quick) ++times.unanswered;
    }
    return times;
}

void print_head(bool markdown) {
    const char* form = markdown ? "| {} | {} | {} | {} | {} | {} | {} | {} | {} |\n"
                                : "{:<44}{:>8}{:>8}{:>8}{:>8}{:>9}{:>12}{:>8}{:>8}\n";
    fmt::print(fmt::runtime(form), "detail", "median", "p90", "p99", "worst", "frames/s", "over 33.3", "solve",
               "paint");
    if (markdown) fmt::print("|---|---|---|---|---|---|---|---|---|\n");
}

void print_row(const std::string& name, const DragTimes& times, bool markdown) {
    const char* form = markdown ? "| {} | {:.1f} | {:.1f} | {:.1f} | {:.1f} | {:.0f} | {} of {} | {:.1f} | {:.1f} |\n"
                                : "{:<44}{:>8.1f}{:>8.1f}{:>8.1f}{:>8.1f}{:>9.0f}{:>5} of {:<4}{:>8.1f}{:>8.1f}\n";
    const Times& frame = times.frame;
    fmt::print(fmt::runtime(form), name, frame.quantile(0.5), frame.quantile(0.9), frame.quantile(0.99),
               frame.quantile(1.0), 1000.0 / frame.quantile(0.99), frame.over(frame_limit_ms), frame.count(),
               times.solve.quantile(0.5), times.paint.quantile(0.5));
    if (times.unanswered > 0) fmt::print(stderr, "{}: {} frames without an answer\n", name, times.unanswered);
}

}  // namespace

int main(int count, char** words) {
    const bool markdown = count == 2 && std::string(words[1]) == "--markdown";
    if (count > 2 || (count == 2 && !markdown)) {
        fmt::print(stderr, "usage: toehold_drag [--markdown]\n");
        return 2;
    }
    print_head(markdown);
    for (const std::string& name : test::demo_names()) {
        const model::BaseDetail detail = test::demo_detail(name);
        if (on_deck(detail).plate.holes.empty()) continue;
        print_row(name, drag_first_hole(detail, test::shipped_catalog()), markdown);
    }
    fmt::print("Times in ms. frames/s: at p99. solve and paint: medians of their share of a frame.\n");
    return 0;
}
