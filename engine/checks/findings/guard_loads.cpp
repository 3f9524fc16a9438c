// The loads a file states beside what the code in force asks of the guard. The code's loads are computed whatever the
// file says; a file that states less, or from fewer sides, was made for something else and does not stand.
#include "catalog/resolve.h"
#include "checks/basis/result_parts.h"
#include "checks/registry.h"
#include "demand/loads/code_loads.h"
#include "demand/loads/wind.h"

namespace toehold::checks {
namespace {

using format::phrase;
using format::Quantity;
using model::PartKind;
using model::Provision;

bool less(double stated, double required) {
    constexpr double tolerance = 1e-6;
    return stated < required * (1.0 - tolerance);
}

class Looked {
  public:
    explicit Looked(const model::BaseDetail& detail) : detail_(detail), code_(model::building_code(detail.basis)) {}

    std::vector<Finding> all() {
        look_at_code();
        look_at_concentrated();
        look_at_line();
        look_at_directions();
        look_at_wind();
        return std::move(findings_);
    }

  private:
    void add(Severity severity, format::Phrase message, Provision provision) {
        findings_.push_back(
            finding_on({PartKind::push}, severity, std::move(message), model::clause(code_, provision)));
    }

    void look_at_code() {
        if (!model::residential(code_) || detail_.guard.occupancy == model::Occupancy::one_and_two_family) return;
        add(Severity::caution,
            phrase("The {} is for one- and two-family dwellings, and the occupancy is another. The load along the rail "
                   "is taken from the {}. Name an edition of the IBC.",
                   format::Citation{model::edition(code_)},
                   format::Citation{model::edition(model::ibc_of_the_year(code_))}),
            Provision::line_guard_load);
    }

    void look_at_concentrated() {
        const std::optional<model::ConcentratedLoad>& load = detail_.loads.concentrated;
        if (!load || !less(load->push_lb, demand::code_concentrated_lb)) return;
        add(Severity::fails,
            phrase(
                "The file states {} at the top of the guard; the code requires {}, which is what is checked. Correct "
                "the file.",
                Quantity{load->push_lb, "lb"}, Quantity{demand::code_concentrated_lb, "lb"}),
            Provision::concentrated_guard_load);
    }

    void look_at_line() {
        const std::optional<double> required = demand::code_line_lb_per_ft(detail_.guard);
        if (!required) return;
        const std::optional<model::LineLoad>& load = detail_.loads.line;
        if (load && less(load->push_lb_per_ft, *required)) {
            add(Severity::fails,
                phrase("The file states {} along the rail; the code requires {} for this occupancy, which is what is "
                       "checked. Correct the file.",
                       Quantity{load->push_lb_per_ft, "lb/ft"}, Quantity{*required, "lb/ft"}),
                Provision::line_guard_load);
        }
        if (demand::code_line_lb(detail_)) return;
        add(Severity::missing,
            phrase("The code requires {} along the top rail for this occupancy, and the length of rail this post takes "
                   "is not specified: that load is not checked. Give tributary-length of the guard (the spacing of "
                   "the posts).",
                   Quantity{*required, "lb/ft"}),
            Provision::line_guard_load);
    }

    void look_at_directions() {
        const model::Directions stated = detail_.loads.directions;
        if (stated == model::Directions::all_round) return;
        if (demand::code_directions(detail_) == stated) {
            add(Severity::caution,
                stated == model::Directions::outward
                    ? phrase("The guard's load pushes outward and down only, as the file chooses: this edition allows "
                             "it where the top of the guard is not a handrail. Confirm with the building official.")
                    : phrase(
                          "The guard's load pushes across the rail only, as the file chooses: this edition allows it "
                          "where the top of the guard is not a handrail. Confirm with the building official."),
                Provision::concentrated_guard_load);
            return;
        }
        add(Severity::fails,
            detail_.guard.handrail == false
                ? phrase("The file lets the loads push from fewer sides than the {} does. Every direction is checked. "
                         "Correct the file.",
                         format::Citation{model::edition(code_)})
                : phrase("The file lets the loads push from fewer sides, and does not say that the top of the guard is "
                         "no handrail: the code's load acts in any direction, which is what is checked. Correct the "
                         "file."),
            Provision::concentrated_guard_load);
    }

    void look_at_wind() {
        if (!detail_.loads.wind || demand::wind_area_ft2(detail_)) return;
        add(Severity::missing,
            phrase("The area of infill whose wind this post takes is not specified: wind is not checked. Give area of "
                   "the wind, or tributary-length of the guard."),
            Provision::wind);
    }

    const model::BaseDetail& detail_;
    model::BuildingCode code_;
    std::vector<Finding> findings_;
};

std::vector<Finding> guard_loads(const catalog::Resolved& resolved) { return Looked(resolved.detail).all(); }

const RegisterFinding rule{
    {"guard-loads", phrase("Loads on the guard"), "", guard_loads, {}, {}, Provision::concentrated_guard_load}};

}  // namespace
}  // namespace toehold::checks
