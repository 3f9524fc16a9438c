// Readers of keys that several mounts share, and of those of a post on a member's side.
#include "search/ranges/range_reader.h"
#include "model/follow_joint.h"
#include "model/lumber_size.h"
#include "search/ranges/axes.h"
#include "search/ranges/read_choices.h"
#include "units/scan.h"

namespace toehold::search {
namespace {

using format::Phrase;
using format::phrase;

Phrase steps_hint() { return phrase("lengths, or steps as 3/8..3/4/1/8 (from, to, step); in inches without a unit"); }

/// `2:7`: of the upper and the lower fasteners.
std::optional<RowHeights> heights_of(const std::string& text) {
    const std::size_t sign = text.find(':');
    if (sign == std::string::npos) return std::nullopt;
    const std::optional<double> upper = inches(std::string_view(text).substr(0, sign));
    const std::optional<double> lower = inches(std::string_view(text).substr(sign + 1));
    if (!upper || !lower || !(*lower > *upper)) return std::nullopt;
    return RowHeights{*upper, *lower};
}

std::optional<HeadChoice> head_of(const std::string& text) {
    const std::optional<BackingChoice> read = backing_of(text);
    if (!read || read->kind == BackingChoice::Kind::none) return std::nullopt;
    if (read->kind == BackingChoice::Kind::wide_washer) return HeadChoice{};
    return HeadChoice{HeadChoice::Kind::plate, read->side_in, read->thickness_in};
}

std::optional<int> plies_of(const std::string& text) {
    std::string_view rest = text;
    const std::optional<int> count = units::take_whole(rest);
    if (!count || !rest.empty() || *count < 1 || *count > model::most_plies) return std::nullopt;
    return count;
}

}  // namespace

void read_lengths(Reader& reader, std::string_view values, std::vector<double>& into) {
    read_each(reader, values, into, steps_hint(), lengths_of);
}

void read_lumber_sizes(Reader& reader, std::string_view values, std::vector<std::string>& into) {
    read_each(reader, values, into, format::verbatim(model::common_sizes), [](const std::string& text) {
        return model::dressed_size(text) ? std::vector<std::string>{text} : std::vector<std::string>{};
    });
}

void read_plies(Reader& reader, std::string_view values, Ranges& ranges) {
    read_each(reader, values, ranges.side.plies, phrase("1 to {}", model::most_plies),
              [](const std::string& text) { return one_or_none(plies_of(text)); });
}

void read_optional_blocks(Reader& reader, std::string_view values, std::vector<std::string>& into) {
    read_each(reader, values, into, phrase("as-is, or {}", model::common_sizes), [](const std::string& text) {
        if (text == label_as_is) return std::vector<std::string>{{}};
        return model::dressed_size(text) ? std::vector<std::string>{text} : std::vector<std::string>{};
    });
}

void read_hardware(Reader& reader, std::string_view values, std::vector<double>& into) {
    read_each(reader, values, into,
              phrase("as-is, or hardware with the least force its report must give, 100 to 100,000 lb, as hardware "
                     "1600"),
              [](const std::string& text) {
                  const std::optional<EndChoice> end = end_of(text);
                  if (!end || end->kind == EndChoice::Kind::bolted_angles) return std::vector<double>{};
                  return std::vector<double>{end->force_lb};
              });
}

void read_notches(Reader& reader, std::string_view values, Ranges& ranges) {
    read_each(reader, values, ranges.side.unnotched, phrase("as-is or none"), [](const std::string& text) {
        return text == label_as_is || text == label_none ? std::vector<bool>{text == label_none} : std::vector<bool>{};
    });
}

void read_heights(Reader& reader, std::string_view values, Ranges& ranges) {
    read_each(reader, values, ranges.side.heights,
              phrase("the upper and the lower fasteners' heights below the member's top, as 2:7"),
              [](const std::string& text) { return one_or_none(heights_of(text)); });
}

void read_heads(Reader& reader, std::string_view values, Ranges& ranges) {
    read_each(reader, values, ranges.side.heads, phrase("washer, or a square plate's side by its thickness, as 3x1/4"),
              [](const std::string& text) { return one_or_none(head_of(text)); });
}

}  // namespace toehold::search
