#include "xml/line/guard_line.h"

#include "units/length.h"
#include "xml/line/rail_section.h"

#include <array>
#include <utility>

namespace toehold::xml {
namespace {

using units::Kind;

constexpr std::array<Word<model::PostFacing>, 4> facing_words{{{"+y", model::PostFacing::plus_y},
                                                               {"-y", model::PostFacing::minus_y},
                                                               {"+x", model::PostFacing::plus_x},
                                                               {"-x", model::PostFacing::minus_x}}};
constexpr std::array<Word<model::RailRun>, 3> run_words{{{"continuous", model::RailRun::continuous},
                                                         {"broken", model::RailRun::broken},
                                                         {"between", model::RailRun::between}}};
constexpr std::array<Word<bool>, 2> corner_words{{{"hinged", false}, {"rigid", true}}};
constexpr std::array<Word<model::InfillKind>, 5> infill_words{{{"none", model::InfillKind::none},
                                                               {"pickets", model::InfillKind::pickets},
                                                               {"panels", model::InfillKind::panels},
                                                               {"glass", model::InfillKind::glass},
                                                               {"cables", model::InfillKind::cables}}};

enum class LineEnd { first, last };
constexpr std::array<Word<LineEnd>, 2> end_words{{{"first", LineEnd::first}, {"last", LineEnd::last}}};

std::optional<model::RailConnection> read_rail_connection(ElementReader& holder) {
    std::optional<ElementReader> reader = holder.optional_child("connection");
    if (!reader) return std::nullopt;
    model::RailConnection connection;
    connection.name = reader->text("name");
    connection.report = reader->optional_text("report");
    const auto allowable_lb = [&](std::string_view attribute) {
        return reader->optional_quantity(attribute, Kind::force, Sign::positive).value_or(0.0);
    };
    connection.across_lb = allowable_lb("across");
    connection.along_lb = allowable_lb("along");
    connection.vertical_lb = allowable_lb("vertical");
    connection.stiffness_lb_per_in = reader->optional_quantity("stiffness", Kind::force_per_length, Sign::positive);
    return connection;
}

Element rail_connection_element(const model::RailConnection& connection) {
    Element element("connection");
    element.text("name", connection.name).optional_text("report", connection.report);
    element.given_quantity("across", connection.across_lb, Kind::force);
    element.given_quantity("along", connection.along_lb, Kind::force);
    element.given_quantity("vertical", connection.vertical_lb, Kind::force);
    return element.optional_quantity("stiffness", connection.stiffness_lb_per_in, Kind::force_per_length);
}

std::optional<model::Rail> read_rail(ElementReader& line) {
    std::optional<ElementReader> reader = line.optional_child("rail");
    if (!reader) return std::nullopt;
    model::Rail rail;
    rail.section = read_rail_section(*reader);
    rail.run = reader->choice<model::RailRun>("run", run_words);
    rail.corners_rigid = reader->optional_choice<bool>("corners", corner_words).value_or(false);
    rail.connection = read_rail_connection(*reader);
    for (ElementReader& splice : reader->children("splice"))
        rail.splices_in.push_back(splice.quantity("at", Kind::length, Sign::positive));
    return rail;
}

Element rail_element(const model::Rail& rail) {
    Element element("rail");
    write_rail_section(element, rail.section);
    element.text("run", word_for<model::RailRun>(rail.run, run_words));
    if (rail.corners_rigid) element.text("corners", word_for<bool>(true, corner_words));
    if (rail.connection) element.child(rail_connection_element(*rail.connection));
    for (const double at_in : rail.splices_in) {
        Element splice("splice");
        element.child(splice.quantity("at", at_in, Kind::length));
    }
    return element;
}

void read_wall_ends(ElementReader& reader, model::GuardLine& line) {
    for (ElementReader& part : reader.children("wall-end", "at")) {
        const LineEnd end = part.choice<LineEnd>("at", end_words);
        model::WallEnd wall;
        wall.reach_in = part.quantity("reach", Kind::length, Sign::positive);
        wall.connection = read_rail_connection(part);
        (end == LineEnd::first ? line.first_wall : line.last_wall) = std::move(wall);
    }
}

void add_wall_end(Element& line, const std::optional<model::WallEnd>& wall, LineEnd end) {
    if (!wall) return;
    Element element("wall-end");
    element.text("at", word_for<LineEnd>(end, end_words)).quantity("reach", wall->reach_in, Kind::length);
    if (wall->connection) element.child(rail_connection_element(*wall->connection));
    line.child(std::move(element));
}

std::optional<model::Infill> read_infill(ElementReader& line) {
    std::optional<ElementReader> reader = line.optional_child("infill");
    if (!reader) return std::nullopt;
    model::Infill infill;
    infill.kind = reader->choice<model::InfillKind>("kind", infill_words);
    infill.solid_ratio = reader->optional_number("solid-ratio", Sign::not_negative);
    return infill;
}

Element infill_element(const model::Infill& infill) {
    Element element("infill");
    element.text("kind", word_for<model::InfillKind>(infill.kind, infill_words));
    if (infill.solid_ratio) element.text("solid-ratio", exact_number(*infill.solid_ratio));
    return element;
}

}  // namespace

std::vector<model::GuardLine> read_guard_lines(ElementReader& reader) {
    std::vector<model::GuardLine> lines;
    for (ElementReader& part : reader.children("guard-line")) {
        model::GuardLine line;
        line.id = part.id();
        line.posts = part.ids("posts");
        line.sharing = part.optional_yes_no("sharing").value_or(line.sharing);
        line.rail = read_rail(part);
        read_wall_ends(part, line);
        line.infill = read_infill(part);
        lines.push_back(std::move(line));
    }
    return lines;
}

Element guard_line_element(const model::GuardLine& line) {
    std::string posts;
    for (const std::string& post : line.posts) posts += (posts.empty() ? "" : " ") + post;
    Element element("guard-line");
    element.text("id", line.id).text("posts", posts);
    if (line.sharing) element.yes_no("sharing", true);
    if (line.rail) element.child(rail_element(*line.rail));
    add_wall_end(element, line.first_wall, LineEnd::first);
    add_wall_end(element, line.last_wall, LineEnd::last);
    if (line.infill) element.child(infill_element(*line.infill));
    return element;
}

std::vector<model::PlacedPost> read_posts(ElementReader& reader) {
    std::vector<model::PlacedPost> posts;
    for (ElementReader& part : reader.children("post-at")) {
        model::PlacedPost post;
        post.id = part.id();
        post.at = {part.quantity("x", Kind::length, Sign::any), part.quantity("y", Kind::length, Sign::any)};
        post.mount = part.id("mount");
        if (const auto rail = part.optional_quantity("rail-length", Kind::length, Sign::positive)) {
            post.rail_length_ft = *rail / units::inches_per_foot;
        }
        post.facing = part.optional_choice<model::PostFacing>("faces", facing_words).value_or(post.facing);
        post.rise_in = part.optional_quantity("rise", Kind::length, Sign::any).value_or(post.rise_in);
        posts.push_back(std::move(post));
    }
    return posts;
}

Element post_at_element(const model::PlacedPost& post) {
    Element element("post-at");
    element.text("id", post.id);
    element.quantity("x", post.at.x_in, Kind::length).quantity("y", post.at.y_in, Kind::length);
    if (post.facing != model::PostFacing::plus_y)
        element.text("faces", word_for<model::PostFacing>(post.facing, facing_words));
    element.given_quantity("rise", post.rise_in, Kind::length).text("mount", post.mount);
    if (post.rail_length_ft)
        element.quantity("rail-length", *post.rail_length_ft * units::inches_per_foot, Kind::length);
    return element;
}

}  // namespace toehold::xml
