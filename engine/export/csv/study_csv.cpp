#include "export/csv/study_csv.h"

#include "export/csv/cells.h"
#include "export/json/keys.h"
#include "study/study.h"

#include <algorithm>
#include <set>

namespace toehold::exporting {
namespace {

std::string with_unit(const study::Field& field) { return csv_cell(field.id + " (" + field.unit + ")"); }

std::string verdict_cell(const study::Judged& judged) {
    return judged.known() ? std::string(key(judged.verdict)) : std::string();
}

std::string ratio_cell(const study::Judged& judged) { return csv_number(judged.ratio()); }

std::string limit_cell(const study::Judged& judged) { return judged.known() ? csv_cell(judged.limit.id) : ""; }

std::string subject_cell(const study::Judged& judged) {
    return judged.known() ? csv_cell(model::key(judged.limit.part)) : "";
}

std::string note_cell(const study::Judged& judged) {
    if (!judged.known()) return csv_cell(format::english(judged.refusal));
    return judged.no_path.empty() ? "" : "no load path";
}

std::set<std::string> checks_of(const study::Sweep& sweep) {
    std::set<std::string> ids;
    for (const study::SweepPoint& point : sweep.points) {
        for (const study::CheckRatio& ratio : point.judged.checks) ids.insert(ratio.check);
    }
    return ids;
}

/// Empty where the check lacks what it needs, or has no load path.
std::string check_cell(const study::Judged& judged, const std::string& check) {
    const auto found = std::find_if(judged.checks.begin(), judged.checks.end(),
                                    [&check](const study::CheckRatio& ratio) { return ratio.check == check; });
    if (found == judged.checks.end() || found->status == checks::Status::missing_evidence) return {};
    return csv_number(found->ratio);
}

std::vector<std::string> side_cells(const study::SwingSide& side) {
    return {csv_number(side.value),    verdict_cell(side.judged),    ratio_cell(side.judged), limit_cell(side.judged),
            subject_cell(side.judged), csv_cell(side.judged.detail), note_cell(side.judged)};
}

}  // namespace

std::string sweep_csv(const study::Sweep& sweep) {
    const std::set<std::string> ids = checks_of(sweep);
    std::vector<std::string> heading{with_unit(sweep.field), "verdict", "governing demand over capacity", "limit",
                                     "subject of limit"};
    for (const std::string& id : ids) heading.push_back(csv_cell(id));
    heading.insert(heading.end(), {"detail", "note"});
    std::string text = csv_line(heading);
    for (const study::SweepPoint& point : sweep.points) {
        const study::Judged& judged = point.judged;
        std::vector<std::string> cells{csv_number(point.value), verdict_cell(judged), ratio_cell(judged),
                                       limit_cell(judged), subject_cell(judged)};
        for (const std::string& id : ids) cells.push_back(check_cell(judged, id));
        cells.insert(cells.end(), {csv_cell(judged.detail), note_cell(judged)});
        text += csv_line(cells);
    }
    return text;
}

std::string tornado_csv(const study::Tornado& tornado) {
    std::string text =
        csv_line({"input", "unit", "now", "governing ratio now", "largest change", "less", "verdict less", "ratio less",
                  "limit less", "subject less", "detail less", "note less", "more", "verdict more", "ratio more",
                  "limit more", "subject more", "detail more", "note more"});
    for (const study::Swing& swing : tornado.swings) {
        std::vector<std::string> cells{csv_cell(swing.field.id), csv_cell(swing.field.unit),
                                       csv_number(swing.field.now), ratio_cell(tornado.now), csv_number(swing.size)};
        for (const study::SwingSide* const side : {&swing.down, &swing.up}) {
            const std::vector<std::string> more = side_cells(*side);
            cells.insert(cells.end(), more.begin(), more.end());
        }
        text += csv_line(cells);
    }
    return text;
}

std::string map_csv(const study::HoldingMap& map) {
    std::string text =
        csv_line({"kind", with_unit(map.across), with_unit(map.up), "along", "holds at", "fails at", "steady",
                  "verdict", "governing demand over capacity", "limit", "subject of limit", "detail", "note"});
    for (const study::MapNode& node : map.nodes) {
        text += csv_line({"point", csv_number(node.across), csv_number(node.up), "", "", "", "",
                          verdict_cell(node.judged), ratio_cell(node.judged), limit_cell(node.judged),
                          subject_cell(node.judged), csv_cell(node.judged.detail), note_cell(node.judged)});
    }
    for (const study::MapBorder& border : map.borders) {
        const bool upward = border.axis == study::MapAxis::up;
        text +=
            csv_line({"border", upward ? csv_number(map.across_values[border.column]) : "",
                      upward ? "" : csv_number(map.up_values[border.row]), csv_cell(upward ? map.up.id : map.across.id),
                      csv_number(border.holds), csv_number(border.fails), border.steady ? "yes" : "no", "", "",
                      csv_cell(border.limit.id), csv_cell(model::key(border.limit.part)), csv_cell(border.detail), ""});
    }
    return text;
}

}  // namespace toehold::exporting
