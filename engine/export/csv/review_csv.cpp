#include "export/csv/review_csv.h"

#include "export/csv/cells.h"
#include "export/json/keys.h"
#include "format/figures.h"

namespace toehold::exporting {
namespace {

std::string anchor_row(const FiledReview& filed, std::size_t index) {
    const catalog::Anchor& anchor = filed.review->resolved.anchors.at(index);
    const demand::AnchorEnvelope& envelope = filed.review->demand->anchors.at(index);
    return csv_line(
        {csv_cell(filed.file), csv_cell(filed.review->detail), csv_cell(anchor.id), csv_number(anchor.at.x_in),
         csv_number(anchor.at.y_in), csv_cell(anchor.name), csv_number(envelope.tension_lb),
         csv_number(format::degrees(envelope.direction_rad)), csv_number(envelope.tension_low_lb),
         csv_number(envelope.flexible_tension_lb), csv_number(envelope.rigid_tension_lb),
         csv_number(envelope.hand_edge_lb), csv_number(envelope.hand_anchor_lb), csv_number(envelope.shear_lb),
         csv_number(envelope.proof_tension_lb), csv_number(envelope.stiffness_lb_per_in),
         csv_number(anchor.embedment_in), csv_number(anchor.thread_in_block_in), csv_number(anchor.at.z_in)});
}

std::string check_row_of(const FiledReview& filed, const checks::CheckResult& result) {
    const bool known = result.status != checks::Status::missing_evidence;
    const checks::Link link = result.link.value_or(checks::Link{});
    return csv_line({csv_cell(filed.file), csv_cell(filed.review->detail), csv_cell(result.id),
                     csv_cell(format::english(result.title)), csv_cell(model::key(result.part)),
                     std::string(key(result.status)), csv_number(result.demand),
                     known ? csv_number(result.capacity) : std::string(), csv_cell(result.unit),
                     known ? csv_number(result.ratio) : std::string(), csv_number(result.direction_deg),
                     csv_cell(model::key(link.from)), csv_cell(model::key(link.to)), csv_cell(format::english(link.by)),
                     csv_cell(result.clause), csv_cell(format::english(result.note))});
}

}  // namespace

std::string anchors_csv_heading() {
    return csv_line({"file", "detail", "anchor", "x (in)", "y (in)", "fastener", "tension used (lb)",
                     "push toward (deg)", "least tension (lb)", "flexible base at nominal stiffness (lb)",
                     "rigid base at nominal stiffness (lb)", "hand tension to edge (lb)", "hand tension to row (lb)",
                     "shear (lb)", "proof tension (lb)", "stiffness (lb/in)", "embedment (in)", "thread in block (in)",
                     "z (in)"});
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
