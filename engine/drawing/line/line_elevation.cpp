#include "drawing/annotation/dimension.h"
#include "drawing/annotation/labels.h"
#include "drawing/line/line_sheet.h"
#include "drawing/scene/shapes.h"
#include "format/figures.h"
#include "wording/line.h"

#include <algorithm>
#include <cmath>
#include <limits>
#include <numbers>

namespace toehold::drawing {
namespace {

using format::phrase;

class LineElevation {
  public:
    explicit LineElevation(const LineSheet& sheet)
        : sheet_(sheet), height_in_(sheet.subject.project.guard.height_in), depth_in_(rail_depth_in(sheet.subject)) {}

    Scene drawn() && {
        scene_.name = "Guard line, elevation";
        add_surface();
        add_rail();
        add_walls();
        scene_.bounds = around(corners_);
        add_dimensions();
        for (std::size_t index = 0; index < sheet_.posts.size(); ++index) add_post(index);
        add_splices();
        add_notes();
        scene_.margin_mm = 38.0;
        return finished(std::move(scene_));
    }

  private:
    [[nodiscard]] static Point foot(const LinePostMark& post) { return {post.station_in, post.rise_in}; }
    [[nodiscard]] Point top(const LinePostMark& post) const { return {post.station_in, post.rise_in + height_in_}; }

    void add_surface() {
        std::vector<Point> surface;
        for (const LinePostMark& post : sheet_.posts) surface.push_back(foot(post));
        scene_.items.emplace_back(stroke_through(surface, Pen::thin, {model::PartKind::guard}));
        corners_ = surface;
    }

    void add_stretch(Point from, Point to, const model::PartId& part) {
        const Point low_to{to.x, to.y - depth_in_}, low_from{from.x, from.y - depth_in_};
        scene_.items.emplace_back(area({from, to, low_to, low_from}, Pen::outline, Fill::plate, part));
        corners_.push_back(from);
        corners_.push_back(to);
    }

    /// One piece, or one from post to post.
    void add_rail() {
        if (!sheet_.jointed()) return add_whole_rail();
        for (std::size_t index = 1; index < sheet_.posts.size(); ++index) {
            const LinePostMark &from = sheet_.posts[index - 1], &to = sheet_.posts[index];
            add_stretch(top(from), top(to), model::rail_part(from.id, to.id));
        }
    }

    void add_whole_rail() {
        std::vector<Point> outline;
        for (const LinePostMark& post : sheet_.posts) outline.push_back(top(post));
        corners_.insert(corners_.end(), outline.begin(), outline.end());
        // To the outer faces of the first and the last post.
        outline.front().x -= 0.5 * sheet_.posts.front().width_in;
        outline.back().x += 0.5 * sheet_.posts.back().width_in;
        const std::vector<Point> upper = outline;
        for (auto point = upper.rbegin(); point != upper.rend(); ++point)
            outline.push_back({point->x, point->y - depth_in_});
        scene_.items.emplace_back(area(outline, Pen::outline, Fill::plate, {model::PartKind::rail}));
    }

    void add_wall(const LinePostMark& post, const LinePostMark& beside, double reach_in) {
        const double run = post.station_in - beside.station_in;
        const double slope = run != 0.0 ? (post.rise_in - beside.rise_in) / run : 0.0;
        const double step = std::copysign(reach_in, run);
        const Point from = top(post), to{from.x + step, from.y + slope * step};
        add_stretch(from, to, model::rail_part(post.id, {}));
        constexpr int strokes = 8;
        constexpr double stroke_mm = 2.4;
        const double low = foot(post).y;
        scene_.items.emplace_back(line(Point{to.x, low}, {to.x, to.y + 0.1 * height_in_}, Pen::cut));
        for (int stroke = 0; stroke <= strokes; ++stroke) {
            const Place at = standing({to.x, low + (to.y + 0.1 * height_in_ - low) * stroke / strokes});
            scene_.items.emplace_back(line(at, moved_mm(at, std::copysign(stroke_mm, step), -stroke_mm), Pen::thin));
        }
        corners_.push_back({to.x, low});
    }

    void add_walls() {
        const std::size_t last = sheet_.posts.size() - 1;
        if (const auto reach = wall_reach_in(sheet_.subject, true)) add_wall(sheet_.posts[0], sheet_.posts[1], *reach);
        if (const auto reach = wall_reach_in(sheet_.subject, false))
            add_wall(sheet_.posts[last], sheet_.posts[last - 1], *reach);
    }

    void add_post(std::size_t index) {
        const LinePostMark& post = sheet_.posts[index];
        const model::PartId part{model::PartKind::post, post.id};
        const double half = 0.5 * post.width_in;
        const double to = sheet_.jointed() ? top(post).y : top(post).y - depth_in_;  // a whole rail lies on it
        scene_.items.emplace_back(rectangle({{post.station_in - half, foot(post).y}, {post.station_in + half, to}},
                                            Pen::outline, Fill::paper, part));
        constexpr double base_mm = 2.0;
        scene_.items.emplace_back(
            line(standing(foot(post), {-base_mm, 0.0}), standing(foot(post), {base_mm, 0.0}), Pen::cut, part));
        if (std::abs(post.turn_rad) > model::straight_rad)
            scene_.items.emplace_back(
                line(standing(foot(post), {0.0, -1.0}), standing(top(post), {0.0, 8.5}), Pen::center, part));
        add_words(index, foot(post), -row_mm, -2.2, post.id, true);
        const std::string role = role_words(post);
        if (!role.empty()) add_words(index, foot(post), 0.0, -2.2 - 2.0 * row_mm, role, false);
        const double above_mm = slopes_at(index) ? 5.0 : 1.6;  // clear of a rail that rises beside it
        if (post.share) add_words(index, top(post), row_mm, above_mm, format::ratio_text(*post.share), true);
    }

    [[nodiscard]] bool slopes_at(std::size_t index) const {
        const double rise = sheet_.posts[index].rise_in;
        return (index > 0 && sheet_.posts[index - 1].rise_in != rise) ||
               (index + 1 < sheet_.posts.size() && sheet_.posts[index + 1].rise_in != rise);
    }

    /// To the nearer neighbor.
    [[nodiscard]] double room_in(std::size_t index) const {
        double room = std::numeric_limits<double>::max();
        const double own = sheet_.posts[index].station_in;
        if (index > 0) room = std::min(room, own - sheet_.posts[index - 1].station_in);
        if (index + 1 < sheet_.posts.size()) room = std::min(room, sheet_.posts[index + 1].station_in - own);
        return room;
    }

    /// `corner 90°`; a post of the line says nothing.
    [[nodiscard]] std::string role_words(const LinePostMark& post) const {
        if (post.role == model::PostRole::line) return {};
        std::string role = format::text(wording::role(post.role), sheet_.subject.locale);
        if (post.role != model::PostRole::corner || post.turn_rad == 0.0) return role;
        return role + " " + format::degrees_text(std::round(std::abs(post.turn_rad) * 180.0 / std::numbers::pi)) +
               "\u00b0";
    }

    /// At the post, so far above or below a point of it; of two neighbors without room the second steps `aside_mm` off.
    void add_words(std::size_t index, Point at, double aside_mm, double off_mm, std::string words, bool bold) {
        Text text;
        text.at = standing(at, {0.0, off_mm});
        text.words = std::move(words);
        text.size = bold ? TextSize::small : TextSize::fine;
        text.bold = bold;
        text.across = Across::middle;
        text.upright = off_mm > 0.0 ? Upright::bottom : Upright::top;
        text.on_paper = off_mm < 0.0;
        text.part = {model::PartKind::post, sheet_.posts[index].id};
        if (index % 2 == 1 && aside_mm != 0.0)
            text.aside = Aside{room_in(index), moved_mm(text.at, 0.0, aside_mm), text.across, text.upright};
        scene_.items.emplace_back(std::move(text));
    }

    void add_splices() {
        if (!sheet_.subject.line.rail) return;
        for (const double splice : sheet_.subject.line.rail->splices_in) {
            for (std::size_t index = 1; index < sheet_.posts.size(); ++index) {
                const LinePostMark &from = sheet_.posts[index - 1], &to = sheet_.posts[index];
                if (splice < from.station_in || splice > to.station_in) continue;
                const double share = (splice - from.station_in) / std::max(1e-9, to.station_in - from.station_in);
                const double level = top(from).y + share * (top(to).y - top(from).y) - 0.5 * depth_in_;
                add_joint(scene_, standing({splice, level}), {model::PartKind::rail});
                break;
            }
        }
    }

    void add_dimensions() {
        const format::Locale& locale = sheet_.subject.locale;
        std::vector<DimensionEnd> ends;
        std::vector<std::string> words;
        for (const LinePostMark& post : sheet_.posts) {
            if (!ends.empty()) words.push_back(length_figure(post.station_in - ends.back().at_in, locale.system));
            ends.push_back({post.station_in, scene_.bounds.low.y});
        }
        add_chain(scene_, {Measure::across, scene_.bounds.low.y, -16.5, Pen::dimension, {}}, ends, words);
        const LinePostMark& first = sheet_.posts.front();
        add_dimension(scene_, {Measure::upright, scene_.bounds.low.x, -9.0, Pen::dimension, {model::PartKind::guard}},
                      {foot(first).y, first.station_in}, {top(first).y, first.station_in},
                      format::text(phrase("guard {}", length_figure(height_in_, locale.system)), locale));
    }

    void add_notes() {
        const format::Locale& locale = sheet_.subject.locale;
        const Place low = standing(scene_.bounds.low);
        std::vector<std::string> notes{rail_note(sheet_), roles_note(sheet_)};
        const bool corner = std::any_of(sheet_.posts.begin(), sheet_.posts.end(), [](const LinePostMark& post) {
            return std::abs(post.turn_rad) > model::straight_rad;
        });
        const format::Phrase view = corner ? phrase("Elevation, unrolled at its corners. {}", unit_note(locale))
                                           : phrase("Elevation. {}", unit_note(locale));
        notes.push_back(format::text(view, locale));
        const bool shares = std::any_of(sheet_.posts.begin(), sheet_.posts.end(),
                                        [](const LinePostMark& post) { return post.share.has_value(); });
        if (shares) {
            notes.push_back(format::text(
                phrase("Numbers above the rail: the largest part of a push on it that reaches the post's top."),
                locale));
        }
        constexpr double first_mm = 23.0, spacing_mm = 3.6;
        for (std::size_t index = 0; index < notes.size(); ++index) {
            const double below_mm = first_mm + spacing_mm * static_cast<double>(index);
            scene_.items.emplace_back(line_note(moved_mm(low, 0.0, -below_mm), notes[index]));
        }
    }

    static constexpr double row_mm = 3.4;
    const LineSheet& sheet_;
    double height_in_, depth_in_;
    Scene scene_;
    std::vector<Point> corners_;
};

}  // namespace

Scene line_elevation(const LineSubject& subject) {
    const LineSheet sheet = line_sheet(subject);
    if (sheet.posts.size() < 2) {
        Scene scene;
        scene.name = "Guard line, elevation";
        return finished(scene);
    }
    return LineElevation(sheet).drawn();
}

}  // namespace toehold::drawing
