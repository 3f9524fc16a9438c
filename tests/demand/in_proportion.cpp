#include "demand/in_proportion.h"

#include "demand/demand_of.h"
#include "support/compare.h"
#include "support/example.h"

#include <algorithm>

using namespace toehold;

namespace {

std::vector<const demand::State*> states_of(const demand::Demand& demand, std::size_t load_case) {
    std::vector<const demand::State*> states;
    for (const demand::State& state : demand.states) {
        if (state.load_case == load_case) states.push_back(&state);
    }
    return states;
}

std::size_t case_of(const demand::Demand& demand, const std::string& id) {
    const auto found = std::find_if(demand.cases.begin(), demand.cases.end(),
                                    [&id](const demand::LoadCase& load) { return load.id == id; });
    REQUIRE(found != demand.cases.end());
    return static_cast<std::size_t>(found - demand.cases.begin());
}

}  // namespace

TEST_CASE("a push lower down gives what the code's push gives, by its moment and its size", "[property]") {
    catalog::Resolved resolved = test::example_resolved();
    model::UserLoad lower;
    lower.name = "a cart";
    lower.push_lb = 300.0;
    lower.height_in = 20.0;
    resolved.detail.loads.user = {lower};
    const demand::Demand both = test::demand_of(resolved);
    const std::size_t user = case_of(both, "user-1");
    const demand::LoadCase& load = both.cases[user];
    const double moment = load.push_lb * load.height_in / (200.0 * 42.0), push = load.push_lb / 200.0;
    // The same load where a vertical force, too small to matter, forbids any proportion: solved on its own.
    resolved.detail.loads.user[0].down_lb = 1e-6;
    const demand::Demand alone = test::demand_of(resolved);
    const auto by_moment = states_of(both, user), solved = states_of(alone, case_of(alone, "user-1-with-vertical"));
    REQUIRE(by_moment.size() >= 72);
    for (std::size_t i = 0; i < 72; i += 5) {
        for (std::size_t a = 0; a < 4; ++a) {
            CHECK_CLOSE(by_moment[i]->anchors[a].tension_lb, solved[i]->anchors[a].tension_lb, 1e-6, 1e-4);
            CHECK_CLOSE(by_moment[i]->anchors[a].tension_lb, moment * both.states[i].anchors[a].tension_lb, 1e-9, 1e-9);
            CHECK_CLOSE(by_moment[i]->anchors[a].shear_lb(), push * both.states[i].anchors[a].shear_lb(), 1e-9, 1e-9);
        }
        CHECK_CLOSE(by_moment[i]->rotation_rad, solved[i]->rotation_rad, 1e-6, 1e-12);
    }
}
