// How long a frame takes while a hand drags a hole: on every shipped detail the first hole goes 2 in along the rail and
// back in steps of 1/64 in, and each step is what the window does for it: the changed detail, the quick answer, and the
// three drawings with the rose painted at 1200 x 800. One after the other, though the window solves beside painting.
// The region where the hole may stand is looked for on a thread beside it, as in the window, and what is known of it is
// painted in each frame. Processor time of the hand's own thread, which neither that thread nor a busy machine
// stretches; and, as `clock`, the time by the wall, which both do.
#include "catalog/catalog.h"
#include "drawing/render/painter.h"
#include "session/region_scene.h"
#include "session/session.h"
#include "session/where_it_holds.h"
#include "solving/solve_service.h"
#include "support/shipped.h"

#include <cairo.h>
#include <fmt/format.h>

#include <algorithm>
#include <chrono>
#include <cstdio>
#include <ctime>
#include <filesystem>
#include <memory>
#include <mutex>
#include <string>
#include <utility>
#include <vector>

namespace {

using namespace toehold;

constexpr double path_in = 2.0, step_in = 1.0 / 64.0;
constexpr double frame_limit_ms = 1000.0 / 30.0;

/// Processor time of this thread.
double now_ms() {
    timespec now{};
    clock_gettime(CLOCK_THREAD_CPUTIME_ID, &now);
    return 1e3 * static_cast<double>(now.tv_sec) + 1e-6 * static_cast<double>(now.tv_nsec);
}
double ms_since(double start_ms) { return now_ms() - start_ms; }

/// By the wall.
class Watch {
  public:
    [[nodiscard]] double ms() const {
        return std::chrono::duration<double, std::milli>(std::chrono::steady_clock::now() - start_).count();
    }

  private:
    std::chrono::steady_clock::time_point start_ = std::chrono::steady_clock::now();
};

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
    Times frame, solve, paint, clock;
    std::size_t unanswered = 0;  ///< frames without a quick answer
    std::size_t regions = 0;     ///< answers on where it holds that came while the hand moved
    // By the wall, from the drag's begin; 0: it did not come while the hand moved.
    double first_ms = 0.0;      ///< the first of them
    double certain_ms = 0.0;    ///< the first with a piece that the whole engine has confirmed
    double confirmed_ms = 0.0;  ///< the last of them
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

    void paint(const session::Session& session, const drawing::SectionPlane& plane, const drawing::Scene& region) {
        const drawing::Overlay overlay = session.overlay();
        const drawing::Subject subject{session.detail(), session.resolved(), &overlay, session.display().system};
        drawing::paint_ground(cairo_, {0, 0, width, height}, drawing::Ground::paper);
        const drawing::Scene plan = drawing::plan(subject, {});
        paint(plan, {0, 0, 700, 500});
        drawing::paint(cairo_, region, drawing::fit(plan, {0, 0, 700, 500}, units_per_mm), drawing::Ground::paper);
        paint(drawing::section(subject, plane), {0, 500, 700, 300});
        paint(drawing::elevation(subject), {700, 0, 500, 500});
        paint(drawing::polar_envelope(session.polar_curves(), overlay, {}), {700, 500, 500, 300});
        cairo_surface_flush(surface_);
    }

  private:
    static constexpr int width = 1200, height = 800;

    static constexpr double units_per_mm = 96.0 / 25.4;
    void paint(const drawing::Scene& scene, const drawing::Area& area) {
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

/// What the thread that looks has told last, taken up between frames as the window's loop does.
class Mail {
  public:
    void put(std::shared_ptr<const solving::RegionNews> news) {
        const std::lock_guard lock(mutex_);
        news_.push_back(std::move(news));
    }
    [[nodiscard]] std::vector<std::shared_ptr<const solving::RegionNews>> take() {
        const std::lock_guard lock(mutex_);
        return std::exchange(news_, {});
    }

  private:
    std::mutex mutex_;
    std::vector<std::shared_ptr<const solving::RegionNews>> news_;
};

/// Where the hole in hand holds: looked for beside, drawn once for each answer.
class Region {
  public:
    Region(session::Session& session, const catalog::Catalog& catalog)
        : session_(session),
          search_(catalog, [this](std::shared_ptr<const solving::RegionNews> news) { mail_.put(std::move(news)); }),
          holds_(session,
                 {[this](model::BaseDetail detail, editing::Dragged dragged) {
                      return search_.begin(std::move(detail), std::move(dragged));
                  },
                  [this] { search_.stop(); }},
                 [] {}) {}
    void take(const editing::Handle& handle) { holds_.take(handle); }
    /// What is known by now.
    const drawing::Scene& scene(DragTimes& times) {
        for (auto& news : mail_.take()) {
            if (times.regions++ == 0) times.first_ms = watch_.ms();
            if (times.certain_ms == 0.0 && !news->region.holds.empty()) times.certain_ms = watch_.ms();
            if (news->last) times.confirmed_ms = watch_.ms();
            holds_.receive(std::move(news));
            if (holds_.known() == nullptr) continue;
            scene_ = session::region_scene(*holds_.known(), holds_.detail(), std::nullopt, session_.locale());
        }
        return scene_;
    }

  private:
    session::Session& session_;
    Watch watch_;
    Mail mail_;
    solving::Regions search_;
    session::WhereItHolds holds_;
    drawing::Scene scene_;
};

DragTimes drag_first_hole(const model::BaseDetail& start, const catalog::Catalog& catalog) {
    solving::Request asked_for;
    session::Session session(catalog, start,
                             [&asked_for](solving::Request request) { asked_for = std::move(request); });
    Sheet sheet;
    DragTimes times;
    const model::Hole& hole = on_deck(start).plate.holes.front();
    const drawing::SectionPlane plane = drawing::section_plane(start, model::anchor_part(hole.id));
    // Inward over the plate, so that the hole stays on it.
    const double sense = hole.center.x_in > 0.0 ? -1.0 : 1.0;
    Region region(session, catalog);
    const std::vector<editing::Handle> handles = editing::handles(start, {editing::Sheet::plan, plane});
    const auto handle = std::find_if(handles.begin(), handles.end(), [&](const editing::Handle& one) {
        return one.id.kind == editing::HandleKind::hole && one.id.part.id == hole.id;
    });
    if (handle != handles.end()) region.take(*handle);
    for (const double offset : path()) {
        const Watch watch;
        const double start_of_frame = now_ms();
        model::BaseDetail moved = session.detail();
        on_deck(moved).plate.holes.front().center.x_in = hole.center.x_in + sense * offset;
        session.change(format::verbatim("Move hole " + hole.id), std::move(moved), "drag", true);
        const double start_of_solve = now_ms();
        session.receive(solving::solve_quick(asked_for, catalog));
        times.solve.add(ms_since(start_of_solve));
        const double start_of_paint = now_ms();
        sheet.paint(session, plane, region.scene(times));
        times.paint.add(ms_since(start_of_paint));
        times.frame.add(ms_since(start_of_frame));
        times.clock.add(watch.ms());
        if (session.freshness() != session::Freshness::quick) ++times.unanswered;
    }
    return times;
}

void print_head(bool markdown) {
    const char* form = markdown ? "| {} | {} | {} | {} | {} | {} | {} | {} | {} | {} | {} | {} |\n"
                                : "{:<44}{:>8}{:>8}{:>9}{:>12}{:>8}{:>8}{:>10}{:>9}{:>8}{:>9}{:>11}\n";
    fmt::print(fmt::runtime(form), "detail", "median", "p99", "frames/s", "over 33.3", "solve", "paint", "by clock",
               "regions", "first", "certain", "confirmed");
    if (markdown) fmt::print("|---|---|---|---|---|---|---|---|---|---|---|---|\n");
}

void print_row(const std::string& name, const DragTimes& times, bool markdown) {
    const char* form =
        markdown ? "| {} | {:.1f} | {:.1f} | {:.0f} | {} of {} | {:.1f} | {:.1f} | {:.0f} | {} | {:.0f} | {:.0f} | "
                   "{:.0f} |\n"
                 : "{:<44}{:>8.1f}{:>8.1f}{:>9.0f}{:>5} of {:<4}{:>8.1f}{:>8.1f}{:>10.0f}{:>9}{:>8.0f}{:>9.0f}"
                   "{:>11.0f}\n";
    const Times& frame = times.frame;
    fmt::print(fmt::runtime(form), name, frame.quantile(0.5), frame.quantile(0.99), 1000.0 / frame.quantile(0.99),
               frame.over(frame_limit_ms), frame.count(), times.solve.quantile(0.5), times.paint.quantile(0.5),
               1000.0 / times.clock.quantile(0.9), times.regions, times.first_ms, times.certain_ms, times.confirmed_ms);
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
    fmt::print(
        "Times in ms. frames/s: at p99 of processor time; by clock: frames/s at p90 by the wall, with the region "
        "looked "
        "for beside. solve and paint: medians of their share of a frame. regions: answers on where the hole holds "
        "while "
        "it moved; first: when the first came, certain: the first with a piece that is confirmed, confirmed: the last; "
        "0: later.\n");
    return 0;
}
