// The code's "in any direction" (ASCE 7 4.5.1) is solved as every horizontal direction, straight down and straight up.
// A tilted push is left out. On the anchors of one row the horizontal push P at height h over a lever arm d pulls P
// h/d, straight up pulls P/2; tilted by the best angle, P sqrt((h/d)^2 + 1/4): with h/d = 7 (42 in over 6 in) 0.26 %
// more, with h/d = 3 1.4 %. Straight up or down alone matters on the framing only: it is a force there where the push
// is a couple of no sum, so that a joist's support may meet more of it. Where joists are not described there is no such
// place: on anchors and blocks the push's P h/d per row is at least five times the P/2 of the straight pull for every
// plate no longer than 12 in under a guard of 30 in and more.
//
// The infill's 50 lb on 1 sq ft (not at once with the other two) is a quarter of the concentrated load and stands no
// higher, so that the base never meets more of it: it is no case.
#include "demand/loads/load_cases.h"

#include "demand/framing/member_supports.h"
#include "demand/loads/code_loads.h"
#include "demand/loads/wind.h"

#include <fmt/format.h>

#include <cmath>
#include <utility>

namespace toehold::demand {
namespace {

using format::Citation;
using format::phrase;
using format::Quantity;
using model::Provision;

/// What every horizontal push has from the detail.
class Pushes {
  public:
    explicit Pushes(const model::BaseDetail& detail)
        : detail_(detail), factor_(live_load_factor(detail.basis)), code_(model::building_code(detail.basis)) {}

    std::vector<LoadCase> of_code_and_file() {
        add_code_concentrated();
        add_code_line();
        add_file_concentrated();
        add_file_line();
        for (std::size_t index = 0; index < detail_.loads.user.size(); ++index) add_user(index);
        return std::move(cases_);
    }

    [[nodiscard]] LoadCase proof(double push_lb) const {
        // A test's load is known, so that it has no factor under either method.
        LoadCase test = at_top("proof-test", phrase("proof test of {}", Quantity{push_lb, "lb"}), push_lb,
                               phrase("{}", Citation{model::clause(code_, Provision::load_test)}));
        test.push_lb = push_lb;
        test.load_factor = 1.0;
        test.duration = LoadDuration::proof_test;
        test.directions_rad = directions_rad(model::Directions::outward);
        return test;
    }

  private:
    [[nodiscard]] format::Phrase code_source(Provision provision) const {
        return phrase("{} and {}", Citation{model::clause(code_, provision)},
                      Citation{model::clause(code_, Provision::guard_load_standard)});
    }

    [[nodiscard]] LoadCase at_top(std::string id, format::Phrase name, double push_lb, format::Phrase source) const {
        LoadCase load;
        load.id = std::move(id);
        load.name = std::move(name);
        load.push_lb = factor_ * push_lb;
        load.height_in = model::lever_height_in(detail_);
        load.load_factor = factor_;
        load.source = std::move(source);
        return load;
    }

    /// What of a push at the guard's top the post has to take, in the post's guard line.
    [[nodiscard]] double shared(double push_lb) const {
        return detail_.loads.sharing ? detail_.loads.sharing->factor * push_lb : push_lb;
    }

    /// `130 lb of 200 lb at the top of the guard`
    [[nodiscard]] format::Phrase concentrated_name(double push_lb) const {
        const Quantity whole{push_lb, "lb"};
        if (!detail_.loads.sharing) return phrase("{} at the top of the guard", whole);
        return phrase("{} of {} at the top of the guard, by guard line {}", Quantity{shared(push_lb), "lb"}, whole,
                      detail_.loads.sharing->line);
    }

    void add_code_concentrated() {
        const Quantity size{code_concentrated_lb, "lb"};
        const format::Phrase source = code_source(Provision::concentrated_guard_load);
        LoadCase push =
            at_top("concentrated", concentrated_name(code_concentrated_lb), shared(code_concentrated_lb), source);
        push.directions_rad = directions_rad(code_directions(detail_));
        cases_.push_back(push);
        if (!joists_described(detail_.framing)) return;
        push.push_lb = 0.0;
        push.directions_rad = directions_rad(model::Directions::outward);
        push.id = "concentrated-down";
        push.name = phrase("{} straight down at the top of the guard", size);
        push.down_lb = factor_ * code_concentrated_lb;
        cases_.push_back(push);
        if (code_directions(detail_) == model::Directions::outward) return;
        push.id = "concentrated-up";
        push.name = phrase("{} straight up at the top of the guard", size);
        push.down_lb = -factor_ * code_concentrated_lb;
        cases_.push_back(push);
    }

    void add_code_line() {
        const std::optional<double> per_foot = code_line_lb_per_ft(detail_.guard), all = code_line_lb(detail_);
        if (!per_foot || !all) return;
        LoadCase line =
            at_top("line", along_rail(*per_foot, *all / *per_foot), *all, code_source(Provision::line_guard_load));
        line.directions_rad = directions_rad(code_directions(detail_));
        cases_.push_back(line);
    }

    static format::Phrase along_rail(double lb_per_ft, double length_ft) {
        return phrase("{} over {} of rail", Quantity{lb_per_ft, "lb/ft"}, Quantity{length_ft, "ft"});
    }

    void add_file_concentrated() {
        const std::optional<model::ConcentratedLoad>& load = detail_.loads.concentrated;
        if (!load) return;
        add_of_file(at_top("file-concentrated", concentrated_name(load->push_lb), shared(load->push_lb),
                           phrase("specified in the file")),
                    load->down_lb, load->push_lb == code_concentrated_lb);
    }

    void add_file_line() {
        const std::optional<model::LineLoad>& load = detail_.loads.line;
        if (!load) return;
        const double push_lb = load->push_lb_per_ft * load->spacing_ft;
        add_of_file(at_top("file-line", along_rail(load->push_lb_per_ft, load->spacing_ft), push_lb,
                           phrase("specified in the file")),
                    load->down_lb, push_lb == code_line_lb(detail_));
    }

    void add_user(std::size_t index) {
        const model::UserLoad& load = detail_.loads.user[index];
        LoadCase push =
            at_top(fmt::format("user-{}", index + 1), format::verbatim(load.name), load.push_lb,
                   load.source.empty() ? phrase("stated by the user") : phrase("{}", Citation{load.source}));
        if (load.height_in) push.height_in = *load.height_in + model::below_surface_in(detail_);
        add_of_file(std::move(push), load.down_lb, false);
    }

    /// `of_code`: the push alone is the code's, which is there already.
    void add_of_file(LoadCase push, double down_lb, bool of_code) {
        push.directions_rad = directions_rad(detail_.loads.directions);
        if (!of_code) cases_.push_back(push);
        if (down_lb == 0.0) return;
        push.id += "-with-vertical";
        push.down_lb = down_lb * factor_;
        const Quantity size{std::abs(down_lb), "lb"};
        push.name = down_lb > 0.0 ? phrase("{} with {} down", std::move(push.name), size)
                                  : phrase("{} with {} up", std::move(push.name), size);
        cases_.push_back(push);
    }

    const model::BaseDetail& detail_;
    double factor_;
    model::BuildingCode code_;
    std::vector<LoadCase> cases_;
};

bool is_push_at_top(const LoadCase& load, double height_in) {
    return load.push_lb > 0.0 && load.down_lb == 0.0 && load.wind_lb == 0.0 && load.height_in == height_in &&
           load.duration == LoadDuration::guard_live;
}

/// The guard's largest push at its top: what acts beside wind.
std::optional<LoadCase> largest_push(const std::vector<LoadCase>& cases, double height_in) {
    const LoadCase* largest = nullptr;
    for (const LoadCase& load : cases) {
        if (is_push_at_top(load, height_in) && (largest == nullptr || load.push_lb > largest->push_lb)) largest = &load;
    }
    if (largest == nullptr) return std::nullopt;
    return *largest;
}

/// Contact and anchors are one-way, but under a push alone everything grows in proportion to it: the larger of two
/// pushes that differ in nothing else gives more of every force. A preload ends that proportion.
bool covers(const LoadCase& larger, const LoadCase& smaller, bool preloaded) {
    const bool alike = larger.height_in == smaller.height_in && larger.duration == smaller.duration &&
                       larger.wind_lb == 0.0 && smaller.wind_lb == 0.0 && larger.down_lb == 0.0 &&
                       smaller.down_lb == 0.0 && larger.load_factor == smaller.load_factor &&
                       larger.directions_rad.size() >= smaller.directions_rad.size();
    return alike && (preloaded ? larger.push_lb == smaller.push_lb : larger.push_lb >= smaller.push_lb);
}

void find_covered(std::vector<LoadCase>& cases, bool preloaded) {
    for (std::size_t index = 0; index < cases.size(); ++index) {
        for (std::size_t other = 0; other < cases.size() && !cases[index].covered_by; ++other) {
            if (other == index || cases[other].covered_by) continue;
            // Of equal ones the first is solved.
            if (cases[other].push_lb == cases[index].push_lb && other > index) continue;
            if (covers(cases[other], cases[index], preloaded)) cases[index].covered_by = other;
        }
    }
}

}  // namespace

double live_load_factor(const model::Basis& basis) { return basis.method == model::Method::lrfd ? 1.6 : 1.0; }

std::vector<LoadCase> load_cases(const model::BaseDetail& detail) {
    std::vector<LoadCase> cases = Pushes(detail).of_code_and_file();
    for (LoadCase& wind : wind_cases(detail, largest_push(cases, model::lever_height_in(detail))))
        cases.push_back(std::move(wind));
    find_covered(cases, model::preloaded(detail));
    return cases;
}

std::optional<LoadCase> proof_case(const model::BaseDetail& detail) {
    if (!detail.loads.proof_push_lb) return std::nullopt;
    return Pushes(detail).proof(*detail.loads.proof_push_lb);
}

}  // namespace toehold::demand
