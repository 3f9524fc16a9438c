#include "export/csv/review_csv.h"

#include "export/json/keys.h"
#include "format/figures.h"

#include <fmt/format.h>

#include <cmath>

namespace toehold::exporting {
namespace {

constexpr std::string_view line_end = "\r\n";

/// The fewest digits that read back to the same number.
std::string number_cell(double value) { return std::isfinite(value) ? fmt::format("{}", value) : std::string(); }

std::string number_cell(const std::optional<double>& value) { return value ? number_cell(*value) : std::string(); }

std::string csv_line(const std::vector<std::string>& cells) {
    return fmt::format("{}{}", fmt::join(cells, ","), line_end);
}

std::string anchor_row(const FiledReview& filed, std::size_t index) {
    const catalog::Anchor& anchor = filed.review->resolved.anchors.at(index);
    const demand::AnchorEnvelope& envelope = filed.review->demand->anchors.at(index);
    return csv_line({csv_cell(filed.file), csv_cell(filed.review->detail), csv_cell(anchor.id),
                     number_cell(anchor.at.x_in), number_cell(anchor.at.y_in), csv_cell(anchor.name),
                     number_cell(envelope.tension_lb), number_cell(format::degrees(envelope.direction_rad)),
                     number_cell(envelope.tension_low_lb), number_cell(envelope.flexible_tension_lb),
                     number_cell(envelope.rigid_tension_lb), number_cell(envelope.hand_edge_lb),
                     number_cell(envelope.hand_anchor_lb), number_cell(envelope.shear_lb),
                     number_cell(envelope.proof_tension_lb), number_cell(envelope.stiffness_lb_per_in),
                     number_cell(anchor.embedment_in), number_cell(anchor.thread_in_block_in)});
}

std::string check_row_of(const FiledReview& filed, const checks::CheckResult& result) {
    const bool known = result.status != checks::Status::missing_evidence;
    const checks::Link link = result.link.value_or(checks::Link{});
    return csv_line({csv_cell(filed.file), csv_cell(filed.review->detail), csv_cell(result.id),
                     csv_cell(format::english(result.title)), csv_cell(model::key(result.part)),
                     std::string(key(result.status)), number_cell(result.demand),
                     known ? number_cell(result.capacity) : std::string(), csv_cell(result.unit),
                     known ? number_cell(result.ratio) : std::string(), number_cell(result.direction_deg),
                     csv_cell(model::key(link.from)), csv_cell(model::key(link.to)), csv_cell(format::english(link.by)),
                     csv_cell(result.clause), csv_cell(format::english(result.note))});
}

}  // namespace

std::string csv_cell(const std::string& text) {
    constexpr std::string_view begins_formula = "=+-@\t\r";
    std::string harmless = text;
    if (!text.empty() && begins_formula.find(text.front()) != std::string_view::npos)
        harmless.insert(harmless.begin(), '\'');
    if (harmless.find_first_of(",\"\r\n") == std::string::npos) return harmless;
    std::string quoted = "\"";
    for (const char character : harmless) {
        if (character == '"') quoted += '"';
        quoted += character;
    }
    return quoted + "\"";
}

std::string anchors_csv_heading() {
    return csv_line({"file", "detail", "anchor", "x (in)", "y (in)", "fastener", "tension used (lb)",
                     "push toward (deg)", "least tension (lb)", "flexible base at nominal stiffness (lb)",
                     "rigid base at nominal stiffness (lb)", "hand tension to edge (lb)", "hand tension to row (lb)",
                     "shear (lb)", "proof tension (lb)", "stiffness (lb/in)", "embedment (in)",
                     "thread in block (in)"});
}

std::string anchors_csv_rows(const FiledReview& filed) {
    std::string rows;
    if (!filed.review->demand) return rows;
    for (std::size_t index = 0; index < filed.review->demand->anchors.size(); ++index) rows += anchor_row(filed, index);
    return rows;
}

std::string checks_csv_heading() {
    return csv_line({"file", "detail", "check", "title", "subject", "status", "demand (in unit)", "capacity (in unit)",
                     "unit", "demand over capacity", "push toward (deg)", "from", "to", "by", "clause", "note"});
}

std::string checks_csv_rows(const FiledReview& filed) {
    std::string rows;
    for (const checks::CheckResult& result : filed.review->checks) rows += check_row_of(filed, result);
    return rows;
}

std::string anchors_csv(const std::vector<FiledReview>& reviews) {
    std::string text = anchors_csv_heading();
    for (const FiledReview& filed : reviews) text += anchors_csv_rows(filed);
    return text;
}

std::string checks_csv(const std::vector<FiledReview>& reviews) {
    std::string text = checks_csv_heading();
    for (const FiledReview& filed : reviews) text += checks_csv_rows(filed);
    return text;
}

}  // namespace toehold::exporting
